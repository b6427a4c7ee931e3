// What a reader of a computed working voltage has to know of it: what was assumed because the file does not say, and
// where its figures disagree.

import type { Circuit, Design } from '#model/design.ts';
import type { Converter } from '#model/design/voltages.ts';
import type { Supply } from '#model/design/supply.ts';

import { bulkValley } from './bulk-valley.ts';
import { computedStress, type RunningConverter } from './computed-stress.ts';
import { woundCircuits } from './converter-turns.ts';
import { KNOWN_WITHIN } from './estimate-width.ts';
import type { ComputedStress, StressNote } from '#stress/pair/pair-stress.ts';

/** Turns are whole and rectifiers drop part of a volt: closer than this they agree. */
const AGREE_WITHIN = 0.2;

export function converterNotes(
  design: Design,
  running: RunningConverter | null,
  computed: ComputedStress | null,
  a: Circuit,
  b: Circuit,
): readonly StressNote[] {
  if (design.converter === null) return [];
  if (running === null || computed === null) return [{ kind: 'no-primary' }];
  const { note } = running.primary;
  return [
    ...(note === null ? [] : [note]),
    ...bulkNotes(design.converter, design.supply),
    ...[a, b].flatMap((circuit) => circuitNotes(design, running, circuit)),
    ...otherPole(running, computed, a, b),
  ];
}

function bulkNotes(converter: Converter, supply: Supply): readonly StressNote[] {
  if (converter.bulk === null) return [];
  const mains = converter.bulk.lowestMains.value;
  const bulk = bulkValley(converter, supply);
  return bulk === null ? [{ kind: 'bulk-empty', mains }] : [{ kind: 'bulk-valley', mains, bulk }];
}

function circuitNotes(
  design: Design,
  { primary, runs }: RunningConverter,
  { id }: Circuit,
): readonly StressNote[] {
  const wound = woundCircuits(design).get(id);
  if (id === primary.circuit || wound === undefined || wound.total === 0) return [];
  const run = runs.find(({ run: { outputs } }) => outputs.has(id))?.run;
  if (run === undefined) return [{ kind: 'not-in-converter', circuit: id }];
  const given = run.outputs.get(id) ?? 0;
  const byTurns = [wound.largest, wound.total].map((turns) => (run.reflected * turns) / primary.turns);
  const nearest = byTurns.reduce((one, other) =>
    Math.abs(other - given) < Math.abs(one - given) ? other : one,
  );
  const differ = Math.abs(nearest - given) > AGREE_WITHIN * given;
  return differ ? [{ kind: 'turns-disagree', circuit: id, given, byTurns: nearest }] : [];
}

function otherPole(
  running: RunningConverter,
  computed: ComputedStress,
  a: Circuit,
  b: Circuit,
): readonly StressNote[] {
  const tied = [a, b].filter(({ role }) => role !== 'mains');
  const other = tied.length === 1 ? computedStress(running, a, b, 'plus') : null;
  if (other === null || tied[0] === undefined) return [];
  const wider = 1 + KNOWN_WITHIN;
  const more = other.rms.value > computed.rms.value * wider || other.peak.value > computed.peak.value * wider;
  return more
    ? [{ kind: 'other-pole', circuit: tied[0].id, rms: other.rms.value, peak: other.peak.value }]
    : [];
}
