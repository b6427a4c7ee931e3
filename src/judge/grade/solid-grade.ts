// What the solids in a piece are worth: thin sheets, wire covers, thin blocks, sleeves and walls, closed joints.
// Each rule gives insulations of its own; they stand in series with each other and with the distance.

import type { Book } from '#books/book.ts';
import type { Punctured } from '#solver/paths/pieces.ts';
import type { VoltsPeak } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';
import { BASIC_AND_SUPPLEMENTARY, BASIC_ONLY, FUNCTIONAL, type Insulation, REINFORCED } from './grade.ts';
import type { Strength, Stuff } from './stuff.ts';

/** Test levels of a pair, peak; null where the book has none: then nothing stands it. */
export interface TestLevels {
  readonly basic: VoltsPeak | null;
  readonly reinforced: VoltsPeak | null;
}

/** A strength may fall short of a level by this part and still count. */
const SLACK = 0.001;

export interface SolidRules {
  readonly alone: number;
  readonly anyTwo: number;
  readonly bondedTwo: number;
  readonly bondedMore: number;
}

export function solidRules(book: Book): SolidRules {
  const rule = book.plyRule('reinforced').value;
  const bonded = book.bondedPlies.value;
  return { alone: rule.alone, anyTwo: rule.anyTwo, bondedTwo: bonded.two, bondedMore: bonded.threeOrMore };
}

export const stands = (strength: Strength, level: VoltsPeak | null): boolean =>
  strength === 'whatever' || (strength !== null && level !== null && strength >= level * (1 - SLACK));

/** One insulation for every kind of solid punctured. */
export function solidInsulations(
  punctured: readonly Punctured[],
  stuffs: readonly Stuff[],
  levels: TestLevels,
  rules: SolidRules,
): readonly Insulation[] {
  const out: Insulation[] = [];
  const sheets: Stuff[] = [];
  for (const { stuff: id, count } of punctured) {
    const stuff = stuffs[id];
    // solids that had to share a class count as the weakest
    if (!stuff) continue;
    switch (stuff.kind) {
      case 'sheet':
        if (stuff.bonded === null || count < 2) sheets.push(...Array.from({ length: count }, () => stuff));
        else out.push(bondedStack(stuff, count, levels, rules));
        break;
      case 'cover': {
        const crossed = Math.max(1, Math.floor(count / stuff.layers!));
        const one =
          stuff.layers === 1 ? BASIC_ONLY : stuff.layers === 2 ? BASIC_AND_SUPPLEMENTARY : REINFORCED;
        out.push(...Array.from({ length: crossed }, () => one));
        break;
      }
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
  if (sheets.length > 0) out.push(thinSheets(sheets, levels, rules));
  return out;
}

/** One ply is basic at most; more from so many that each stand the test, or so many of which any two together do. */
function thinSheets(plies: readonly Stuff[], levels: TestLevels, rules: SolidRules): Insulation {
  const enough = (level: VoltsPeak | null) =>
    plies.filter((ply) => stands(ply.strength, level)).length >= rules.alone ||
    standInTwos(plies, level, rules.anyTwo, []);
  const basic = plies.some((ply) => stands(ply.strength, levels.basic));
  const supplementary = enough(levels.basic);
  return { basic: basic || supplementary, supplementary, reinforced: enough(levels.reinforced) };
}

/** So many plies can be chosen that any two of them together stand the test. */
function standInTwos(
  plies: readonly Stuff[],
  level: VoltsPeak | null,
  wanted: number,
  chosen: readonly Stuff[],
): boolean {
  if (chosen.length === wanted) return true;
  return plies.some(
    (ply, i) =>
      chosen.every((other) => stands(together(ply, other), level)) &&
      standInTwos(plies.slice(i + 1), level, wanted, [...chosen, ply]),
  );
}

/** Alike plies add up, others count twice the weaker. */
function together(a: Stuff, b: Stuff): Strength {
  if (a.strength === null || b.strength === null) return null;
  if (a.strength === 'whatever' || b.strength === 'whatever') return 'whatever';
  const weaker = Math.min(a.strength, b.strength);
  return (a.alike === b.alike ? a.strength + b.strength : 2 * weaker) as VoltsPeak;
}

/** Plies that cannot be parted: the stack stands the test raised by the book's factor. */
function bondedStack(stuff: Stuff, count: number, levels: TestLevels, rules: SolidRules): Insulation {
  const factor = count === 2 ? rules.bondedTwo : rules.bondedMore;
  const raised = (level: VoltsPeak | null) => (level === null ? null : ((level * factor) as VoltsPeak));
  const stack: Strength =
    typeof stuff.strength === 'number' ? ((stuff.strength * count) as VoltsPeak) : stuff.strength;
  const supplementary = stands(stack, raised(levels.basic));
  return {
    basic: stands(stuff.strength, levels.basic) || supplementary,
    supplementary,
    reinforced: stands(stack, raised(levels.reinforced)),
  };
}
