// A part across the barrier of the class that may stand there.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';

export const bridgeActs = (doc: DesignFile, { between }: WeakSpot): readonly Act[] =>
  (doc.bridges ?? []).flatMap((bridge, i): readonly Act[] => {
    const isThere = between === null || between.every((id) => bridge.between.includes(id));
    if (!isThere || bridge.kind !== 'capacitor') return [];
    const set = [{ field: `bridges[${i}].safetyClass`, to: 'Y1' }];
    return [{ kind: 'bridge', on: `bridges[${i}].safetyClass`, set, amount: null }];
  });
