// From how long a run on a solid counts as strong: from the book's least thickness up, and as long as it takes to show the
// test of the grade. A run in between is a stuff of its own, worth what so long a run shows at the least.

import { because } from '#standards/because.ts';
import type { RunStep } from '#solver/network/pieces.ts';
import { inMm, nm, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { PairQuestion } from './path-requirement.ts';
import { SLACK, type Solid, stands } from '#books/questions/solid.ts';
import type { SolidsById, StuffNumbers } from '#judge/assume/stuff.ts';
import type { StuffId } from '#solver/section/build.ts';
import { closedFrom } from './closed-from.ts';
import type { SolidRules } from './solid-rules.ts';

export interface SolidRuns {
  /** By stuff; see `RunStep`. */
  readonly runs: readonly (readonly RunStep[])[];
  /** Runs that show only so much: stuffs of their own beside those of the build. */
  readonly added: readonly AddedRun[];
}

interface AddedRun {
  readonly of: StuffId;
  readonly id: StuffId;
  /** From this length on it shows this level, and no more. */
  readonly from: number;
  readonly level: number;
}

const NEVER = Infinity;

/** `numbers`: the runs take theirs of them. */
export function solidRuns(
  questions: readonly PairQuestion[],
  stuffs: SolidsById,
  rules: SolidRules,
  numbers: StuffNumbers,
): SolidRuns {
  const added: AddedRun[] = [];
  const addTo = (of: StuffId, stuff: Solid) => (level: number, from: number) => {
    const id = numbers.of(`${of} run ${shownBy(stuff, level)} from ${from}`);
    added.push({ of, id, from, level });
    return id;
  };
  const stepsOf = (stuff: Solid, id: StuffId): readonly RunStep[] => {
    const levels = levelsFor(stuff, questions);
    switch (stuff.kind) {
      case 'cover':
        if (stuff.layers === 3) return isShownAll(stuff, levels) ? [] : [{ below: NEVER, as: id }];
        return [{ below: strongFrom(stuff, Math.max(...levels), rules), as: id }];
      case 'full-cover':
        return [{ below: NEVER, as: id }];
      case 'sheet':
        return [{ below: sheetStrongFrom(stuff, Math.max(...levels), rules), as: id }];
      case 'wall':
      case 'block':
      case 'sleeve':
        return thickSteps(stuff, id, levels, rules, addTo(id, stuff));
      case 'closed-joint':
        return [{ below: closedFrom(questions, rules), as: id }];
      case 'run':
        return [{ below: rules.leastThickness, as: id }];
    }
  };
  const steps = new Map([...stuffs].map(([id, stuff]) => [id, stepsOf(stuff, id)]));
  for (const { id } of added) if (!steps.has(id)) steps.set(id, []);
  return { runs: byNumber(steps, (each) => each), added };
}

/** The stuffs of the build, and behind them the runs that show only so much. */
export function withRuns(stuffs: SolidsById, added: SolidRuns['added']): SolidsById {
  const all = new Map(stuffs);
  for (const { of, id, level, from } of added) all.set(id, runOf(stuffs.get(of)!, level, from));
  return all;
}

/** A list with a place for every number up to the highest; those that are not of this build are not asked for. */
export function byNumber<Of, T>(
  all: ReadonlyMap<StuffId, Of>,
  make: (one: Of, id: StuffId) => T,
): readonly T[] {
  const list: T[] = [];
  for (const [id, one] of all) list[id] = make(one, id);
  return list;
}

/** Every level that a pair asks of this material, rising; without end where the book has no figure. */
function levelsFor({ material }: Solid, questions: readonly PairQuestion[]): readonly number[] {
  const levels = questions.flatMap(({ needed, asked }) => {
    if (needed === null) return [];
    const { basic, reinforced } = asked.creepage.levels(material);
    return [basic ?? Infinity, reinforced ?? Infinity];
  });
  return [...new Set([0, ...levels])].sort((a, b) => a - b);
}

const isShownAll = ({ strength }: Solid, levels: readonly number[]): boolean =>
  levels.every((level) => stands(strength, level as VoltsPeak));

/** A stated strength holds for the whole solid; else its matter shows so much a millimetre. */
function strongFrom(stuff: Solid, level: number, { leastThickness }: SolidRules): number {
  if (stuff.stated || stuff.strength === 'whatever')
    return stands(stuff.strength, level as VoltsPeak) ? leastThickness : NEVER;
  return byMatter(stuff, level, leastThickness);
}

function byMatter({ perMm }: Solid, level: number, least: Nm): number {
  if (perMm === Infinity || level === 0) return least;
  return perMm === 0 ? NEVER : Math.max(least, Math.ceil((level * (1 - SLACK) * 1e6) / perMm));
}

/**
 * Across a sheet only its film counts, lengthwise the run itself; a stated strength is that of the sheet across. A run no
 * longer than the sheet is thick goes across.
 */
function sheetStrongFrom(sheet: Solid, level: number, rules: SolidRules): number {
  const across = strongFrom(sheet, level, rules);
  const along = Math.min(across, byMatter(sheet, level, rules.leastThickness));
  return sheet.solid >= across ? along : Math.max(along, sheet.thickness + 1);
}

function thickSteps(
  stuff: Solid,
  id: number,
  levels: readonly number[],
  rules: SolidRules,
  add: (level: number, from: number) => StuffId,
): readonly RunStep[] {
  const least = rules.leastThickness;
  const bounds = levels.map((level) => ({ level, from: strongFrom(stuff, level, rules) }));
  const steps: RunStep[] = [{ below: least, as: id }];
  bounds.forEach(({ level, from }, i) => {
    const next = bounds[i + 1];
    // so long a run shows this level and not the next
    if (next === undefined || next.from === from) return;
    steps.push({ below: next.from, as: level === 0 ? id : add(level, from) });
  });
  return steps;
}

/** A stated strength holds for the whole solid. */
const shownBy = ({ stated, strength }: Solid, level: number): VoltsPeak =>
  voltsPeak(stated ? Number(strength) : level);

function runOf(stuff: Solid, level: number, from: number): Solid {
  const { material } = stuff;
  const shown = shownBy(stuff, level);
  const values = { material, from: inMm(nm(from)), shown };
  return {
    ...stuff,
    kind: 'run',
    strength: shown,
    because: because('strong-run', values, [], [stuff.because]),
  };
}
