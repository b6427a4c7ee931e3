// What the solids in a piece are worth: thin sheets, wire covers, thin blocks, sleeves and walls, closed joints.
// Each rule gives insulations of its own; they stand in series with each other and with the distance.

import {
  BASIC_AND_SUPPLEMENTARY,
  BASIC_ONLY,
  FUNCTIONAL,
  type Insulation,
  REINFORCED,
  worthOf,
} from '#books/questions/insulation.ts';
import {
  type Crossed,
  type LevelsOf,
  type Solid,
  stands,
  type Strength,
  type TestLevels,
} from '#books/questions/solid.ts';
import { asShown, basicAtMost, shownOf, solidWorth } from '#books/shared/solid-worth.ts';
import { standingAlone, standInTwos } from '#books/shared/sheets.ts';
import { because, type Because, judgedLater, type Judged } from '#standards/because.ts';
import type { Column } from '#units/terms.ts';
import { peakOfSine, voltsPeak, type VoltsPeak } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';
import type { Solids } from './solids.ts';

interface SheetRules {
  readonly alone: number;
  readonly anyTwo: number;
  readonly bondedTwo: number;
  readonly bondedMore: number;
  /** Reinforced from three bonded plies: what the whole stack stands over the mandrel, at the least. */
  readonly mandrel: VoltsPeak;
}

/** The answer of the book: the rules are read once, what is crossed is graded as often as it is asked for. */
export function solidsWorthOf(solids: Solids) {
  const sheets = solids.plyRule('reinforced');
  const bonded = solids.bondedPlies;
  const rules: SheetRules = {
    ...sheets.value,
    bondedTwo: bonded.value.two,
    bondedMore: bonded.value.threeOrMore,
    mandrel: peakOfSine(bonded.value.mandrelLeast),
  };
  return (crossed: readonly Crossed[], levelsOf: LevelsOf): readonly Judged<Insulation>[] => {
    const parted = ({ solid, count }: Crossed): boolean =>
      solid.kind === 'sheet' && (solid.bonded === null || count < 2);
    const out = crossed.flatMap((each) => {
      if (parted(each)) return [];
      const levels = levelsOf(each.solid.material);
      return each.solid.kind === 'sheet'
        ? [bondedStack(each.solid, each.count, levels, rules, bonded.because)]
        : oneByOne(each, levels, solids);
    });
    const plies = crossed
      .filter(parted)
      .flatMap(({ solid, count }) => Array.from({ length: count }, () => solid));
    return plies.length > 0 ? [...out, thinSheets(plies, levelsOf, rules, sheets.because)] : out;
  };
}

/** What is no sheet is an insulation each. */
function oneByOne(
  { solid, count }: Crossed,
  levels: TestLevels,
  solids: Solids,
): readonly Judged<Insulation>[] {
  switch (solid.kind) {
    case 'sheet':
      return [];
    case 'cover': {
      const times = Math.max(1, Math.floor(count / (solid.layers ?? count)));
      const one = certifiedCover(solid, levels, solids);
      return Array.from({ length: times }, () => one);
    }
    case 'run':
      return [solidWorth(solid, asShown(solid, levels), levels)];
    case 'full-cover':
    case 'wall':
    case 'block':
    case 'sleeve':
    case 'closed-joint':
      return [solidWorth(solid, basicAtMost(solid, levels), levels)];
    default:
      return unreachable(solid.kind);
  }
}

/**
 * Graded by its layers alone, as its certificate has it, up to what its type test shows: of three layers half of what two
 * such wires stand twisted, and half as much again as a lower grade; of fewer the ordinary level that the twisted pair
 * stands, and at high frequency half of that.
 */
function certifiedCover(cover: Solid, levels: TestLevels, solids: Solids): Judged<Insulation> {
  const { layers } = cover;
  const earned = layers === null ? null : solids.wireLayers(layers).value;
  return solidWorth(cover, earned === null ? FUNCTIONAL : coverWorth(cover, EARNED[earned], levels), levels);
}

const EARNED = {
  nothing: FUNCTIONAL,
  basic: BASIC_ONLY,
  'basic and supplementary': BASIC_AND_SUPPLEMENTARY,
  reinforced: REINFORCED,
} as const;

/** `earned`: by its certificate. */
function coverWorth(
  cover: Solid,
  earned: Insulation,
  { basic, reinforced, ordinary }: TestLevels,
): Insulation {
  const { strength, stated } = cover;
  const half = stated || typeof strength !== 'number' ? strength : voltsPeak(strength / 2);
  if (earned.reinforced)
    return stands(strength, reinforced) ? earned : stands(half, basic) ? BASIC_ONLY : FUNCTIONAL;
  const pair = stated || typeof strength !== 'number' ? strength : voltsPeak(2 * strength);
  const holds = stands(strength, basic) || (basic === ordinary.basic && stands(pair, basic));
  return holds ? earned : FUNCTIONAL;
}

/** One ply is basic at most; more from so many that each stand the test, or so many of which any two together do. */
function thinSheets(
  plies: readonly Solid[],
  levelsOf: LevelsOf,
  rules: SheetRules,
  rule: Because,
): Judged<Insulation> {
  const standing = (column: Column) => standingAlone(plies, levelsOf, column);
  const enough = (column: Column) =>
    standing(column) >= rules.alone || standInTwos(plies, levelsOf, column, rules.anyTwo);
  const supplementary = enough('basic');
  const value: Insulation = {
    basic: standing('basic') > 0 || supplementary,
    supplementary,
    reinforced: enough('reinforced'),
  };
  return judgedLater(value, () => {
    const kinds = [...new Set(plies)];
    const { basic, reinforced } = levelsOf(kinds[0]?.material ?? null);
    const values = { plies: plies.length, basic, reinforced, worth: worthOf(value) };
    return because('thin-sheets', values, [], [...kinds.map((ply) => ply.because), rule]);
  });
}

/** Plies that cannot be parted: the stack stands the test raised by the book's factor, from three on over a mandrel too. */
function bondedStack(
  ply: Solid,
  count: number,
  levels: TestLevels,
  rules: SheetRules,
  rule: Because,
): Judged<Insulation> {
  const factor = count === 2 ? rules.bondedTwo : rules.bondedMore;
  const raised = (level: VoltsPeak | null) => (level === null ? null : ((level * factor) as VoltsPeak));
  const bent = count > 2 ? rules.mandrel : voltsPeak(0);
  const stack: Strength =
    typeof ply.strength === 'number' ? ((ply.strength * count) as VoltsPeak) : ply.strength;
  const supplementary = stands(stack, raised(levels.basic));
  const value: Insulation = {
    basic: stands(ply.strength, levels.basic) || supplementary,
    supplementary,
    reinforced: stands(stack, raised(levels.reinforced)) && stands(stack, bent),
  };
  return judgedLater(value, () => {
    const values = { plies: count, factor, shown: shownOf(stack), worth: worthOf(value) };
    return because('bonded-sheets', values, [], [ply.because, rule]);
  });
}
