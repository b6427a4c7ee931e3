// What solids are worth by clause 29.3: layers that can be parted, so many that each stand the test of the grade; layers
// bonded together are one; one layer under the least thickness is basic at most. Certified winding wire has no rule here.

import type { SolidAnswers } from '#books/questions/book.ts';
import { FUNCTIONAL, type Insulation, worthOf } from '#books/questions/insulation.ts';
import { asShown, basicAtMost, sheetsOf, solidWorth } from '#books/shared/solid-worth.ts';
import { standingAlone } from '#books/shared/sheets.ts';
import { type Crossed, type LevelsOf, type Solid, stands, type TestLevels } from '#books/questions/solid.ts';
import { because, judgedLater, type Judged } from '#standards/because.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';

/** `least` is the thickness of reinforced insulation, `layers` the rule of layers. */
export function solidsWorth(layers: Rule, leastSupplementary: SolidAnswers['leastThickness']) {
  const supplementaryFrom = leastSupplementary().value;
  return (crossed: readonly Crossed[], levelsOf: LevelsOf): readonly Judged<Insulation>[] => {
    const sheets = sheetsOf(crossed);
    const single = crossed
      .filter(({ solid }) => solid.kind !== 'sheet')
      .map(({ solid }) => oneLayer(solid, levelsOf(solid.material), supplementaryFrom));
    return sheets.length === 0 ? single : [...single, stackOf(sheets, levelsOf, layers)];
  };
}

/**
 * A run as thick as a strong solid by what it shows; one of the thickness for supplementary that stands its test is basic
 * and supplementary; anything thinner is basic at most. A wire's cover earns nothing.
 */
function oneLayer(solid: Solid, levels: TestLevels, supplementaryFrom: number): Judged<Insulation> {
  if (solid.kind === 'cover') return solidWorth(solid, FUNCTIONAL, levels);
  if (solid.kind === 'run') return solidWorth(solid, asShown(solid, levels), levels);
  const isThick =
    solid.thickness >= supplementaryFrom && stands(solid.strength, levels.supplementary ?? null);
  const basic = basicAtMost(solid, levels);
  return solidWorth(solid, isThick ? { ...basic, supplementary: true } : basic, levels);
}

function stackOf(sheets: readonly Solid[], levelsOf: LevelsOf, layers: Rule): Judged<Insulation> {
  const forSupplementary = sheets.filter(({ strength, material }) =>
    stands(strength, levelsOf(material).supplementary ?? null),
  ).length;
  const value: Insulation = {
    basic: standingAlone(sheets, levelsOf, 'basic') > 0,
    supplementary: forSupplementary >= layers.figure('supplementary'),
    reinforced: standingAlone(sheets, levelsOf, 'reinforced') >= layers.figure('reinforced'),
  };
  return judgedLater(value, () => {
    const { basic, reinforced } = levelsOf(sheets[0]?.material ?? null);
    const kinds = [...new Set(sheets)].map((sheet) => sheet.because);
    const values = { plies: sheets.length, basic, reinforced, worth: worthOf(value) };
    return because('thin-sheets', values, [], [...kinds, layers.because()]);
  });
}
