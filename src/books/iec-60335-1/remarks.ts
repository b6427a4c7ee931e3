// What IEC 60335-1 says besides: where the rows of the transformer standard, to which its annex G refers, ask more than
// clause 29; and that distances which may move want more.

import type { BookRemark } from '#books/questions/book.ts';
import type { Question, Required } from '#books/questions/required.ts';
import type { Column } from '#units/terms.ts';
import { lookUp } from '#standards/tables/look-up.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import { weakestConfirmed } from '#standards/because.ts';
import { nm } from '#units/quantity.ts';
import type { Tables } from './tables.ts';

export function remarksOf(
  { files, rules }: Tables,
  asked: Question,
  required: Required,
): readonly BookRemark[] {
  const { needed, rms, transients } = asked;
  if (needed === null || asked.pollutionDegree !== 2) return moving({ files, rules }, transients);
  const column: Column = needed === 'reinforced' || needed === 'double' ? 'reinforced' : 'basic';
  const own = { clearance: required.clearance[column], creepage: required.creepage('IIIb')[column] };
  const others = {
    clearance: lookUp(files.transformerClearance, rms, column),
    creepage: lookUp(files.transformerCreepage, rms, column),
  };
  const more = (['clearance', 'creepage'] as const).flatMap((metric): readonly BookRemark[] => {
    const [mine, other] = [own[metric], others[metric]];
    if (isOutOfRange(mine) || other.kind !== 'found' || other.value <= mine.value) return [];
    return [
      {
        kind: 'other-rows',
        rule: rules('transformer-distances'),
        metric,
        own: mine.value,
        other: nm(other.value),
        confirmed: weakestConfirmed(other.because),
      },
    ];
  });
  return [...more, ...moving({ files, rules }, transients)];
}

/** Distances outside that can move want so much more from this impulse on. */
function moving({ rules }: Tables, { withstand }: Question['transients']): readonly BookRemark[] {
  const rule = rules('movable-adder');
  return isOutOfRange(withstand) || withstand.value < rule.figure('from') ? [] : [{ kind: 'reads', rule }];
}
