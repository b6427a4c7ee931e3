// What could mend one weak spot: acts of the trade that the rule book knows, each just large enough for what is missing.
// Nothing is proposed that earns no credit (enamel, varnish, edges turned up, a test of the whole transformer).

import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';
import { bondActs, orderActs, tapeDownActs } from './build-acts.ts';
import { bridgeActs } from './bridge-acts.ts';
import { coreActs } from './core-acts.ts';
import { leadActs } from './lead-acts.ts';
import { marginActs } from './margin-acts.ts';
import { tapeActs, wireActs } from './solid-acts.ts';
import { windowActs } from './window-acts.ts';

export function actsOfSpot(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  switch (spot.kind) {
    case 'unsafe-bridge':
    case 'weak-bridge':
      return bridgeActs(doc, spot);
    case 'overfull':
      return windowActs(doc);
    case 'hot':
    case 'touch-current':
      return [];
    case 'few-plies':
    case 'weak-ply':
    case 'enamel-only':
    case 'touching':
      return [
        ...tapeActs(doc, spot),
        ...marginActs(doc, spot),
        ...wireActs(doc, spot),
        ...orderActs(doc, spot),
      ];
    case 'loose-end':
      return [
        ...tapeDownActs(doc, spot),
        ...marginActs(doc, spot),
        ...tapeActs(doc, spot),
        ...wireActs(doc, spot),
      ];
    case 'core-bridge':
    case 'thin-wall':
      return [
        ...coreActs(doc, spot),
        ...bondActs(doc),
        ...marginActs(doc, spot),
        ...tapeActs(doc, spot),
        ...leadActs(doc, spot),
      ];
    case 'lead-in-margin':
    case 'bare-lead':
    case 'lead-crossing':
      return [...leadActs(doc, spot), ...marginActs(doc, spot), ...wireActs(doc, spot)];
    default:
      return [
        ...marginActs(doc, spot),
        ...tapeActs(doc, spot),
        ...wireActs(doc, spot),
        ...coreActs(doc, spot),
      ];
  }
}
