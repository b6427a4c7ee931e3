// Times the mend of a failing build of eight layers, and the spread of one of twelve, in processor time: on a machine that
// does other things too it says what the work costs. The draws are shared among threads, so that on two cores they take half.

import { fileJudge } from '#judge/judging/judge-files.ts';
import { heldMends } from '#mend/hold/held-mends.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT } from '#spread/placement.ts';
import { MEASURED, spread } from '#spread/spread.ts';
import { sandwich } from './builds.ts';

const DRAWS = 10_000;
const CORES = 2;
/** What was asked for, seconds. */
const ASKED = { first: 2, whole: 10, drawn: 10 } as const;

export function mending(): readonly (readonly [string, string, string])[] {
  const search = heldMends(failing(8), fileJudge());
  const began = spent();
  let first: number | null = null;
  for (let step = search.next(); step.done !== true; step = search.next())
    if (first === null && step.value().proposals.length > 0) first = spent() - began;
  const whole = spent() - began;
  const drawing = spread(nearTheEdge(12), fileJudge(), {
    seed: 1,
    draws: DRAWS,
    measured: MEASURED,
    placement: PLACEMENT,
  });
  const before = spent();
  for (let step = drawing.next(); step.done !== true; step = drawing.next());
  return [
    row('first mend of 8 layers', first, ASKED.first),
    row('all mends of 8 layers, and how they hold', whole, ASKED.whole),
    row(`${DRAWS} draws of 12 layers, on ${CORES} cores`, (spent() - before) / CORES, ASKED.drawn),
  ];
}

/** Seconds of the processor so far. */
function spent(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

const row = (what: string, seconds: number | null, asked: number): readonly [string, string, string] => [
  what,
  seconds === null
    ? 'none found'
    : `${seconds.toFixed(1)} s of processor, ${(seconds / asked).toFixed(2)} of what is asked`,
  `<= ${asked} s`,
];

/** The tape between auxiliary and output wound with one ply only. */
const failing = (layers: number): DesignFile =>
  editDesign(sandwich(layers) as unknown as DesignFile, 'layers[3].plies', 1);

/** Sleeves of shown strength and margins a hand's breadth above what is asked, so that some pieces meet and some do not. */
function nearTheEdge(layers: number): DesignFile {
  const doc = sandwich(layers) as unknown as DesignFile;
  const sleeved = doc.windings.flatMap((_, w) =>
    w < 3 ? ['start', 'finish'].map((end) => `windings[${w}].leads.${end}.sleeve`) : [],
  );
  const sleeve = { material: 'ptfe', wall: '0.5 mm', into: '4 mm' };
  return sleeved.reduce((file, field) => editDesign(file, field, sleeve), doc);
}
