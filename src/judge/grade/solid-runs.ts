// From how long a run on a solid counts as strong: from the book's least thickness up, and as long as it takes to show the
// test of the grade. A run in between is a stuff of its own, worth what so long a run shows at the least.

import { because } from '#standards/because.ts';
import type { RunStep } from '#solver/network/pieces.ts';
import { inMm, nm, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { PairQuestion } from './path-requirement.ts';
import { SLACK, type Solid, stands } from '#books/questions/solid.ts';
import { closedFrom } from './closed-from.ts';
import type { SolidRules } from './solid-rules.ts';

export interface SolidRuns {
  /** Those of the build, and behind them the runs that show only so much. */
  readonly stuffs: readonly Solid[];
  /** By stuff; see `RunStep`. */
  readonly runs: readonly (readonly RunStep[])[];
}

const NEVER = Infinity;

export function solidRuns(
  questions: readonly PairQuestion[],
  stuffs: readonly Solid[],
  rules: SolidRules,
): SolidRuns {
  const all = [...stuffs];
  const add = (stuff: Solid): number => all.push(stuff) - 1;
  const runs = stuffs.map((stuff, id): readonly RunStep[] => {
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
        return thickSteps(stuff, id, levels, rules, add);
      case 'closed-joint':
        return [{ below: closedFrom(questions, rules), as: id }];
      case 'run':
        return [{ below: rules.leastThickness, as: id }];
    }
  });
  return { stuffs: all, runs: [...runs, ...all.slice(stuffs.length).map(() => [])] };
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
  add: (stuff: Solid) => number,
): readonly RunStep[] {
  const least = rules.leastThickness;
  const bounds = levels.map((level) => ({ level, from: strongFrom(stuff, level, rules) }));
  const steps: RunStep[] = [{ below: least, as: id }];
  bounds.forEach(({ level, from }, i) => {
    const next = bounds[i + 1];
    // so long a run shows this level and not the next
    if (next === undefined || next.from === from) return;
    steps.push({ below: next.from, as: level === 0 ? id : add(runOf(stuff, level, from)) });
  });
  return steps;
}

function runOf(stuff: Solid, level: number, from: number): Solid {
  const { material } = stuff;
  const shown = voltsPeak(stuff.stated ? Number(stuff.strength) : level);
  const values = { material, from: inMm(nm(from)), shown };
  return {
    ...stuff,
    kind: 'run',
    strength: shown,
    because: because('strong-run', values, [], [stuff.because]),
  };
}
