// A build in which everything is known and the barrier holds: filled margins of 3 mm on both windings, three plies of
// 0.06 mm that each stand 5 kV. Tests change single fields by their paths and judge it.

import { told, type ToldVerdict } from '#words/told.ts';
import type { Design } from '#model/design.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { changed, designOf, TWO_WINDINGS, type Changes } from '#test/designs.ts';

export const MARGINS = {
  left: { width: '3 mm', filled: true },
  right: { width: '3 mm', filled: true },
};
export const NO_MARGINS = { left: { width: '0 mm' }, right: { width: '0 mm' } };

export const PLIES = {
  kind: 'tape',
  material: 'polyester-tape-25',
  plies: 3,
  plyThickness: '0.06 mm',
  plyWithstand: '5 kV',
};

/** With its enamel. */
const OVERALL = ['0.23 mm', '0.55 mm'];

const MARGIN_BUILD = {
  ...TWO_WINDINGS,
  title: 'bench',
  surroundings: {
    temperature: { method: 'thermocouple', condition: 'normal' },
    hottestInsulation: '100 degC',
  },
  workingVoltages: [{ between: ['pri', 'out'], rms: '250 V', peak: '500 V', frequency: '65 kHz' }],
  former: { ...TWO_WINDINGS.former, material: 'phenolic' },
  core: { bond: 'floating', outerGap: '0.5 mm' },
  windings: TWO_WINDINGS.windings.map(({ wire, ...winding }, i) => ({
    ...winding,
    wire: { ...wire, overallDiameter: OVERALL[i] },
    leads: 'not-judged',
  })),
  layers: [
    { kind: 'winding', winding: 'P', turns: 20, margins: MARGINS },
    PLIES,
    { kind: 'winding', winding: 'S', turns: 8, margins: MARGINS },
  ],
};

export const designWith = (changes: Changes = {}): Design => designOf(changed(MARGIN_BUILD, changes));

/** As it is handed out, with its words. */
export const toldWith = (changes: Changes = {}): ToldVerdict => told(verdictWith(changes));

export const verdictWith = (changes: Changes = {}): Verdict => judge(designWith(changes)).verdict;

export function pairOf(verdict: Verdict, a = 'pri', b = 'out'): PairVerdict {
  const found = verdict.pairs.find(({ between }) => between.includes(a) && between.includes(b));
  if (!found) throw new Error(`no pair ${a} ${b}`);
  return found;
}

/** Grade of the barrier, and its verdict. */
export function barrierWith(changes: Changes = {}): readonly [achieved: string, verdict: string] {
  const { achieved, verdict } = pairOf(verdictWith(changes));
  return [achieved, verdict];
}
