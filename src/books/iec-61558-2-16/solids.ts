// What solids are worth by IEC 61558-1: sheets that can be parted, three of which any two together stand the test, two for
// supplementary; a wire with three certified layers; anything else by what it shows where it is as thick as a strong solid.

import { FUNCTIONAL, type Insulation, REINFORCED, worthOf } from '#books/questions/insulation.ts';
import { asShown, basicAtMost, sheetsOf, solidWorth } from '#books/shared/solid-worth.ts';
import { standingAlone, standInTwos } from '#books/shared/sheets.ts';
import { type Crossed, type LevelsOf, type Solid, stands, type TestLevels } from '#books/questions/solid.ts';
import { because, judgedLater, type Judged } from '#standards/because.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';

export const solidsWorth =
  (layers: Rule, wire: Rule) =>
  (crossed: readonly Crossed[], levelsOf: LevelsOf): readonly Judged<Insulation>[] => {
    const sheets = sheetsOf(crossed);
    const single = crossed
      .filter(({ solid }) => solid.kind !== 'sheet')
      .map(({ solid }) => oneSolid(solid, levelsOf(solid.material), wire));
    return sheets.length === 0 ? single : [...single, stackOf(sheets, levelsOf, layers)];
  };

function oneSolid(solid: Solid, levels: TestLevels, wire: Rule): Judged<Insulation> {
  if (solid.kind === 'cover') {
    const isCertified = solid.layers === wire.figure('layers') && stands(solid.strength, levels.reinforced);
    return solidWorth(solid, isCertified ? REINFORCED : FUNCTIONAL, levels, [wire.because()]);
  }
  return solidWorth(
    solid,
    solid.kind === 'run' ? asShown(solid, levels) : basicAtMost(solid, levels),
    levels,
  );
}

function stackOf(sheets: readonly Solid[], levelsOf: LevelsOf, layers: Rule): Judged<Insulation> {
  const isReinforced =
    standingAlone(sheets, levelsOf, 'reinforced') >= layers.figure('reinforced') ||
    standInTwos(sheets, levelsOf, 'reinforced', layers.figure('anyTwo'));
  const value: Insulation = {
    basic: standingAlone(sheets, levelsOf, 'basic') > 0,
    supplementary: standingAlone(sheets, levelsOf, 'basic') >= layers.figure('supplementary'),
    reinforced: isReinforced,
  };
  return judgedLater(value, () => {
    const { basic, reinforced } = levelsOf(sheets[0]?.material ?? null);
    const kinds = [...new Set(sheets)].map((sheet) => sheet.because);
    const values = { plies: sheets.length, basic, reinforced, worth: worthOf(value) };
    return because('thin-sheets', values, [], [...kinds, layers.because()]);
  });
}
