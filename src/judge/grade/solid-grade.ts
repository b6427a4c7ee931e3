// What the solids in a piece are worth: thin sheets, wire covers, thin blocks, sleeves and walls, closed joints.
// Each rule gives insulations of its own; they stand in series with each other and with the distance.

import type { Book } from '#books/book.ts';
import type { Punctured } from '#solver/paths/pieces.ts';
import { peakOfSine, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { Column } from '#standards/grade.ts';
import { unreachable } from '#units/unreachable.ts';
import { BASIC_AND_SUPPLEMENTARY, BASIC_ONLY, FUNCTIONAL, type Insulation, REINFORCED } from './grade.ts';
import type { Strength, Stuff } from './stuff.ts';

interface Levels {
  readonly basic: VoltsPeak | null;
  readonly reinforced: VoltsPeak | null;
}

/**
 * Test levels of a pair for solids of one material, peak: the larger of the ordinary one and that for high frequency. Null
 * where the book has none: then nothing stands it.
 */
export interface TestLevels extends Levels {
  readonly ordinary: Levels;
}

/** By the material's id; null: none is named. */
export type LevelsOf = (material: string | null) => TestLevels;

/** A strength may fall short of a level by this part and still count. */
export const SLACK = 0.001;

export interface SolidRules {
  readonly leastThickness: Nm;
  readonly alone: number;
  readonly anyTwo: number;
  readonly bondedTwo: number;
  readonly bondedMore: number;
  /** Reinforced from three bonded plies: what the whole stack stands over the mandrel, at the least. */
  readonly mandrel: VoltsPeak;
  /** A proven closed joint is shown up to this many times the ordinary test. */
  readonly proofFactor: number;
}

export function solidRules(book: Book): SolidRules {
  const rule = book.plyRule('reinforced').value;
  const bonded = book.bondedPlies.value;
  return {
    leastThickness: book.leastThickness().value,
    alone: rule.alone,
    anyTwo: rule.anyTwo,
    bondedTwo: bonded.two,
    bondedMore: bonded.threeOrMore,
    mandrel: peakOfSine(bonded.mandrelLeast),
    proofFactor: book.proofFactor.value,
  };
}

export const stands = (strength: Strength, level: VoltsPeak | null): boolean =>
  strength === 'whatever' || (strength !== null && level !== null && strength >= level * (1 - SLACK));

/** One insulation for every kind of solid punctured. */
export function solidInsulations(
  punctured: readonly Punctured[],
  stuffs: readonly Stuff[],
  levelsOf: LevelsOf,
  rules: SolidRules,
): readonly Insulation[] {
  const out: Insulation[] = [];
  const sheets: Stuff[] = [];
  for (const { stuff: id, count } of punctured) {
    const stuff = stuffs[id];
    // solids that had to share a class count as the weakest
    if (!stuff) continue;
    const levels = levelsOf(stuff.material);
    switch (stuff.kind) {
      case 'sheet':
        if (stuff.bonded === null || count < 2) sheets.push(...Array.from({ length: count }, () => stuff));
        else out.push(bondedStack(stuff, count, levels, rules));
        break;
      case 'cover': {
        const crossed = Math.max(1, Math.floor(count / (stuff.layers ?? count)));
        const one = certifiedCover(stuff, levels);
        out.push(...Array.from({ length: crossed }, () => one));
        break;
      }
      case 'run':
        out.push(strongRun(stuff, levels));
        break;
      case 'full-cover':
      case 'wall':
      case 'block':
      case 'sleeve':
      case 'closed-joint':
        out.push(stands(stuff.strength, levels.basic) ? BASIC_ONLY : FUNCTIONAL);
        break;
      default:
        unreachable(stuff.kind);
    }
  }
  if (sheets.length > 0) out.push(thinSheets(sheets, levelsOf, rules));
  return out;
}

/** As thick as a strong solid: worth as much as it shows. */
function strongRun({ strength }: Stuff, { basic, reinforced }: TestLevels): Insulation {
  if (stands(strength, reinforced)) return REINFORCED;
  return stands(strength, basic) ? BASIC_ONLY : FUNCTIONAL;
}

/**
 * Graded by its layers alone, as its certificate has it, up to what its type test shows: of three layers half of what two
 * such wires stand twisted, and half as much again as a lower grade; of fewer the ordinary level that the twisted pair
 * stands, and at high frequency half of that.
 */
function certifiedCover(cover: Stuff, { basic, reinforced, ordinary }: TestLevels): Insulation {
  const { strength, layers, stated } = cover;
  const half = stated || typeof strength !== 'number' ? strength : voltsPeak(strength / 2);
  if (layers === 3)
    return stands(strength, reinforced) ? REINFORCED : stands(half, basic) ? BASIC_ONLY : FUNCTIONAL;
  const pair = stated || typeof strength !== 'number' ? strength : voltsPeak(2 * strength);
  const holds = stands(strength, basic) || (basic === ordinary.basic && stands(pair, basic));
  if (layers === null || !holds) return FUNCTIONAL;
  return layers === 2 ? BASIC_AND_SUPPLEMENTARY : BASIC_ONLY;
}

/** One ply is basic at most; more from so many that each stand the test, or so many of which any two together do. */
function thinSheets(plies: readonly Stuff[], levelsOf: LevelsOf, rules: SolidRules): Insulation {
  const standing = (column: Column) =>
    plies.filter((ply) => stands(ply.strength, levelsOf(ply.material)[column])).length;
  const enough = (column: Column) =>
    standing(column) >= rules.alone || standInTwos(plies, levelsOf, column, rules.anyTwo, []);
  const supplementary = enough('basic');
  return {
    basic: standing('basic') > 0 || supplementary,
    supplementary,
    reinforced: enough('reinforced'),
  };
}

/** So many plies can be chosen that any two of them together stand the test. */
function standInTwos(
  plies: readonly Stuff[],
  levelsOf: LevelsOf,
  column: Column,
  wanted: number,
  chosen: readonly Stuff[],
): boolean {
  if (chosen.length === wanted) return true;
  return plies.some(
    (ply, i) =>
      chosen.every((other) =>
        [ply, other].every(({ material }) => stands(together(ply, other), levelsOf(material)[column])),
      ) && standInTwos(plies.slice(i + 1), levelsOf, column, wanted, [...chosen, ply]),
  );
}

/** Alike plies add up, others count twice the weaker. */
function together(a: Stuff, b: Stuff): Strength {
  if (a.strength === null || b.strength === null) return null;
  if (a.strength === 'whatever' || b.strength === 'whatever') return 'whatever';
  const weaker = Math.min(a.strength, b.strength);
  return (a.alike === b.alike ? a.strength + b.strength : 2 * weaker) as VoltsPeak;
}

/** Plies that cannot be parted: the stack stands the test raised by the book's factor, from three on over a mandrel too. */
function bondedStack(stuff: Stuff, count: number, levels: TestLevels, rules: SolidRules): Insulation {
  const factor = count === 2 ? rules.bondedTwo : rules.bondedMore;
  const raised = (level: VoltsPeak | null) => (level === null ? null : ((level * factor) as VoltsPeak));
  const bent = count > 2 ? rules.mandrel : voltsPeak(0);
  const stack: Strength =
    typeof stuff.strength === 'number' ? ((stuff.strength * count) as VoltsPeak) : stuff.strength;
  const supplementary = stands(stack, raised(levels.basic));
  return {
    basic: stands(stuff.strength, levels.basic) || supplementary,
    supplementary,
    reinforced: stands(stack, raised(levels.reinforced)) && stands(stack, bent),
  };
}
