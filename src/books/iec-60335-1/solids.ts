// What solids are worth by clause 29.3: layers that can be parted, so many that each stand the test of the grade; layers
// bonded together are one; one layer under the least thickness is basic at most. Certified winding wire has no rule here.
//
// A house reading where the text leaves doubt: every layer stands the test of the grade that the stack is to reach, and of
// supplementary insulation the test for reinforced.

import { BASIC_ONLY, FUNCTIONAL, type Insulation, REINFORCED, worthOf } from '#books/insulation.ts';
import { type Crossed, type LevelsOf, type Solid, stands, type TestLevels } from '#books/solid.ts';
import { because, judgedLater, type Judged } from '#standards/because.ts';
import { rules } from './tables.ts';

const layers = rules('solid-layers');

export function solidsWorth(crossed: readonly Crossed[], levelsOf: LevelsOf): readonly Judged<Insulation>[] {
  const sheets = crossed.flatMap(({ solid, count }) =>
    solid.kind === 'sheet' ? Array.from({ length: solid.bonded === null ? count : 1 }, () => solid) : [],
  );
  const others = crossed.filter(({ solid }) => solid.kind !== 'sheet');
  const single = others.map(({ solid }) => oneLayer(solid, levelsOf(solid.material)));
  return sheets.length === 0 ? single : [...single, stackOf(sheets, levelsOf)];
}

/** A run as thick as a strong solid by what it shows, anything thinner as one layer; a wire's cover earns nothing. */
function oneLayer(solid: Solid, { basic, reinforced }: TestLevels): Judged<Insulation> {
  const { kind, strength } = solid;
  const isStrong = kind === 'run' && stands(strength, reinforced);
  const isBasic = kind !== 'cover' && stands(strength, basic);
  const value = isStrong ? REINFORCED : isBasic ? BASIC_ONLY : FUNCTIONAL;
  const shown = strength === 'whatever' ? null : (strength ?? 0);
  const values = { kind, shown, basic, reinforced, worth: worthOf(value) };
  return judgedLater(value, () => because('solid-worth', values, [], [solid.because]));
}

function stackOf(sheets: readonly Solid[], levelsOf: LevelsOf): Judged<Insulation> {
  const standing = (column: 'basic' | 'reinforced') =>
    sheets.filter(({ strength, material }) => stands(strength, levelsOf(material)[column])).length;
  const value: Insulation = {
    basic: standing('basic') > 0,
    supplementary: standing('reinforced') >= layers.figure('supplementary'),
    reinforced: standing('reinforced') >= layers.figure('reinforced'),
  };
  return judgedLater(value, () => {
    const { basic, reinforced } = levelsOf(sheets[0]?.material ?? null);
    const kinds = [...new Set(sheets)].map((sheet) => sheet.because);
    const values = { plies: sheets.length, basic, reinforced, worth: worthOf(value) };
    return because('thin-sheets', values, [], [...kinds, layers.because()]);
  });
}
