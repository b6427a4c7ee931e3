// What could mend one weak spot: acts of the trade that the rule book knows, each just large enough for what is missing.
// Nothing is proposed that earns no credit (enamel, varnish, edges turned up, a test of the whole transformer).

import type { SpotKind, WeakSpot } from '#judge/verdict/spot.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';
import { bondActs, orderActs, tapeDownActs } from './build-acts.ts';
import { bridgeActs } from './bridge-acts.ts';
import { coreActs } from './core-acts.ts';
import { leadActs } from './lead-acts.ts';
import { marginActs } from './margin-acts.ts';
import { tapeActs, wireActs } from './solid-acts.ts';
import { windowActs } from './window-acts.ts';

export const actsOfSpot = (doc: DesignFile, spot: WeakSpot): readonly Act[] =>
  ACTS[spot.kind].flatMap((acts) => acts(doc, spot));

type ActsOf = (doc: DesignFile, spot: WeakSpot) => readonly Act[];

const BETWEEN: readonly ActsOf[] = [tapeActs, marginActs, wireActs, orderActs];
const OVER_CORE: readonly ActsOf[] = [coreActs, bondActs, marginActs, tapeActs, leadActs];
const ON_LEAD: readonly ActsOf[] = [leadActs, marginActs, wireActs];
const ROUND: readonly ActsOf[] = [marginActs, tapeActs, wireActs, coreActs];

/** In the order in which they are tried. */
const ACTS: Readonly<Record<SpotKind, readonly ActsOf[]>> = {
  'unsafe-bridge': [bridgeActs],
  'weak-bridge': [bridgeActs],
  overfull: [windowActs],
  hot: [],
  'touch-current': [],
  'few-plies': BETWEEN,
  'weak-ply': BETWEEN,
  'enamel-only': BETWEEN,
  touching: BETWEEN,
  'loose-end': [tapeDownActs, marginActs, tapeActs, wireActs],
  'core-bridge': OVER_CORE,
  'thin-wall': OVER_CORE,
  'lead-in-margin': ON_LEAD,
  'bare-lead': ON_LEAD,
  'lead-crossing': ON_LEAD,
  'uncovered-tape-edge': ROUND,
  'drifting-tape': ROUND,
  'narrow-margin': ROUND,
  'short-creepage': ROUND,
  'short-clearance': ROUND,
};
