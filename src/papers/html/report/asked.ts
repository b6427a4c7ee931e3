// What the rule book asks of each pair, beside what the build has, with the clause and how well the figure is known.

import { basisWords } from '#words/stress/basis-words.ts';
import { plyWords } from '#words/verdict/ply-words.ts';
import { citesOf, weakestConfirmed, type Because } from '#standards/because.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { askedLength, frequency, kilovoltsUp, lengthDown, volts } from '#words/text/number-words.ts';
import { worstFirst } from '#words/verdict/pair-words.ts';
import { table, wholeBlock, type Content, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';
import { knownSign, pairSign } from '#papers/html/page/signs.ts';

export function asked(parts: ReportParts): readonly (Markup | null)[] {
  return worstFirst(parts.judgement.verdict).map((pair) =>
    pair.required === null
      ? null
      : wholeBlock(
          ['What is asked, ', pairSign(pair.between, parts.looks, parts.theme)],
          table(COLUMNS, rows(pair, pair.required)),
        ),
  );
}

const COLUMNS = ['Figure', 'Basic', 'Reinforced', 'Built', 'Clause', 'How well known'].map((title) => ({
  title,
  tight: title === 'Basic' || title === 'Built' || title === 'How well known',
}));

function rows(
  pair: PairVerdict,
  required: NonNullable<PairVerdict['required']>,
): readonly (readonly Content[])[] {
  const { stress } = pair;
  const { creepage, clearance, throughInsulation, test } = required;
  const voltages = `${volts(stress.rms)} rms, ${volts(stress.peak)} peak, ${frequency(stress.frequency)}`;
  const high = test.highFrequencyPeak === null ? '' : `, ${kilovoltsUp(test.highFrequencyPeak)} above 30 kHz`;
  return [
    [`working voltage: ${voltages}`, '', '', basisWords(stress.basis), ...seen(stress.because)],
    [
      `creepage, group ${creepage.materialGroup}`,
      askedLength(creepage.basic),
      askedLength(creepage.reinforced),
      built(pair, 'creepage'),
      ...seen(creepage.because),
    ],
    [
      `clearance, ${kilovoltsUp(stress.withstand)} transient`,
      askedLength(clearance.basic),
      askedLength(clearance.reinforced),
      built(pair, 'clearance'),
      ...seen(clearance.because),
    ],
    [
      `solid insulation: ${plyWords(throughInsulation.plies)}`,
      '',
      `${askedLength(throughInsulation.leastThickness)} in one layer`,
      '',
      ...seen(throughInsulation.because),
    ],
    [
      `withstand test, ${test.seconds} s`,
      `${kilovoltsUp(test.basicPeak)} peak`,
      `${kilovoltsUp(test.peak)} peak${high}`,
      'not tested',
      ...seen(test.because),
    ],
  ];
}

/** The shortest path of the metric that punctures nothing. */
function built(pair: PairVerdict, metric: 'creepage' | 'clearance'): string {
  const path = pair.paths.find((each) => each.metric === metric && each.plies === 0);
  return path?.length == null ? 'no path' : `${lengthDown(path.length)} mm`;
}

function seen(why: Because): readonly Content[] {
  const places = citesOf(why).map(({ clause, table: number }) =>
    [clause, number === null ? '' : `table ${number}`].filter((part) => part !== '').join(', '),
  );
  return [[...new Set(places.filter((place) => place !== ''))].join('; '), knownSign(weakestConfirmed(why))];
}
