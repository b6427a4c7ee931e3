// What solids are worth by IEC 60601-1, clause 15.5.3: one layer of at least a millimetre by what it shows; two sheets or
// more of together so much film that stand the test together; three of which any two do. A solid that stands the test of
// one means is one means. Wires have no rule here, enamel earns nothing.

import {
  BASIC_AND_SUPPLEMENTARY,
  FUNCTIONAL,
  type Insulation,
  worthOf,
} from '#books/questions/insulation.ts';
import { asShown, sheetsOf, solidWorth } from '#books/shared/solid-worth.ts';
import { standingAlone, standInTwos } from '#books/shared/sheets.ts';
import {
  type Crossed,
  type LevelsOf,
  type Solid,
  stands,
  type Strength,
  type TestLevels,
} from '#books/questions/solid.ts';
import { because, judgedLater, type Judged } from '#standards/because.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';
import { voltsPeak } from '#units/quantity.ts';

export const solidsWorth =
  (rule: Rule) =>
  (crossed: readonly Crossed[], levelsOf: LevelsOf): readonly Judged<Insulation>[] => {
    const sheets = sheetsOf(crossed);
    const single = crossed
      .filter(({ solid }) => solid.kind !== 'sheet')
      .map(({ solid }) => oneSolid(solid, levelsOf(solid.material)));
    return sheets.length === 0 ? single : [...single, stackOf(sheets, levelsOf, rule)];
  };

function oneSolid(solid: Solid, levels: TestLevels): Judged<Insulation> {
  if (solid.kind === 'cover') return solidWorth(solid, FUNCTIONAL, levels);
  if (solid.kind === 'run') return solidWorth(solid, asShown(solid, levels, true), levels);
  const one = stands(solid.strength, levels.basic) ? BASIC_AND_SUPPLEMENTARY : FUNCTIONAL;
  return solidWorth(solid, one, levels);
}

function stackOf(sheets: readonly Solid[], levelsOf: LevelsOf, rule: Rule): Judged<Insulation> {
  const film = sheets.reduce((sum, { solid }) => sum + solid, 0);
  const isThick = sheets.length >= rule.figure('layers') && film >= rule.figure('together');
  const all = togetherShown(sheets);
  const byThickness = isThick && sheets.every(({ material }) => stands(all, levelsOf(material).reinforced));
  const reinforced = byThickness || standInTwos(sheets, levelsOf, 'reinforced', rule.figure('anyTwo'));
  const one = reinforced || standingAlone(sheets, levelsOf, 'basic') > 0;
  const value: Insulation = { basic: one, supplementary: one, reinforced };
  return judgedLater(value, () => {
    const { basic, reinforced: level } = levelsOf(sheets[0]?.material ?? null);
    const kinds = [...new Set(sheets)].map((sheet) => sheet.because);
    const values = { plies: sheets.length, basic, reinforced: level, worth: worthOf(value) };
    return because('thin-sheets', values, [], [...kinds, rule.because()]);
  });
}

/** Alike sheets add up; of others each counts as the weakest. */
function togetherShown(sheets: readonly Solid[]): Strength {
  const strengths = sheets.map(({ strength }) => strength);
  if (strengths.some((one) => one === null)) return null;
  const known = strengths.filter((one) => typeof one === 'number');
  if (known.length === 0) return 'whatever';
  const alike = new Set(sheets.map((sheet) => sheet.alike)).size === 1;
  const sum = known.reduce((total, one) => total + one, 0);
  return voltsPeak(alike && known.length === sheets.length ? sum : Math.min(...known) * known.length);
}
