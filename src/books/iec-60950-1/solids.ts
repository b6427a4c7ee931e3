// What solids are worth by IEC 60950-1: sheets that can be parted, two that each stand the test or three of which any two
// do; wire with three layers to annex U; anything as thick as a strong solid by what it shows, thinner basic at most.

import { FUNCTIONAL, type Insulation, REINFORCED, worthOf } from '#books/questions/insulation.ts';
import { asShown, basicAtMost, sheetsOf, solidWorth } from '#books/shared/solid-worth.ts';
import { standingAlone, standInTwos } from '#books/shared/sheets.ts';
import { type Crossed, type LevelsOf, type Solid, stands, type TestLevels } from '#books/questions/solid.ts';
import { because, judgedLater, type Judged } from '#standards/because.ts';
import type { Column } from '#units/terms.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';

export const solidsWorth =
  (sheet: Rule, wire: Rule) =>
  (crossed: readonly Crossed[], levelsOf: LevelsOf): readonly Judged<Insulation>[] => {
    const sheets = sheetsOf(crossed);
    const single = crossed
      .filter(({ solid }) => solid.kind !== 'sheet')
      .map(({ solid }) => oneSolid(solid, levelsOf(solid.material), wire));
    return sheets.length === 0 ? single : [...single, stackOf(sheets, levelsOf, sheet)];
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

/** One sheet is basic: as such it has no demand but the test. */
function stackOf(sheets: readonly Solid[], levelsOf: LevelsOf, rule: Rule): Judged<Insulation> {
  const enough = (column: Column) =>
    standingAlone(sheets, levelsOf, column) >= rule.figure('alone') ||
    standInTwos(sheets, levelsOf, column, rule.figure('anyTwo'));
  const isReinforced = enough('reinforced');
  const supplementary = isReinforced || enough('basic');
  const value: Insulation = {
    basic: supplementary || standingAlone(sheets, levelsOf, 'basic') > 0,
    supplementary,
    reinforced: isReinforced,
  };
  return judgedLater(value, () => {
    const { basic, reinforced } = levelsOf(sheets[0]?.material ?? null);
    const kinds = [...new Set(sheets)].map((one) => one.because);
    const values = { plies: sheets.length, basic, reinforced, worth: worthOf(value) };
    return because('thin-sheets', values, [], [...kinds, rule.because()]);
  });
}
