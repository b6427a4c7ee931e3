// Ends taped down are an act only where the instruction that stands behind it can still be written.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tapeDownActs } from '#mend/acts/build-acts.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { DesignFile } from '#model/schema/schema.ts';

const build = JSON.parse(
  readFileSync(new URL('../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;
const layer = build.layers.findIndex(({ kind }) => kind === 'winding');
const spot = { layers: [layer] } as unknown as WeakSpot;
const actsOn = (origin: DesignFile['origin']) => tapeDownActs({ ...build, origin }, spot);

describe('ends taped down', () => {
  it('should be offered for a build that is still to be wound, with the line that has to be written', () => {
    const [act] = actsOn('proposed');
    expect(act).toMatchObject({
      kind: 'tape-down',
      set: [{ field: act?.on, to: true }, { field: 'evidence' }],
    });
    expect(JSON.stringify(act)).toContain('to be written');
  });

  it('should not be offered for a build that was taken apart', () => {
    expect(actsOn('dissected')).toEqual([]);
  });
});
