// Worked sheets: how the worst pair's limiting figure was found, and at the end every figure of every pair.

import { leadingPath } from '#words/paths/leading-path.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Because } from '#standards/because.ts';
import { sheetsOf } from '#words/derivation/explain-text.ts';
import { askedLength } from '#words/text/number-words.ts';
import { worstFirst } from '#words/verdict/pair-words.ts';
import { workedSheet } from '#words/derivation/derivation-table.ts';
import { block, raw, table, tag, type Content, type Markup } from '#papers/html/page/markup.ts';
import { sourcesSeen } from '#words/derivation/sources-seen.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';
import { knownSign, pairSign } from '#papers/html/page/signs.ts';

export function foundBlock({ judgement }: ReportParts): Markup | null {
  const [worst] = worstFirst(judgement.verdict);
  const limiting = worst ? leadingPath(worst) : null;
  if (limiting === null || limiting.required === null) return null;
  return block(`How ${askedLength(limiting.required)} was found`, sheetTable(limiting.because));
}

/** Everything else, for who wants to check it by hand. */
export function derivations(parts: ReportParts): readonly (Markup | null)[] {
  const pairs = worstFirst(parts.judgement.verdict);
  return [
    ...pairs.map((pair) =>
      block(['Figures, ', pairSign(pair.between, parts.looks, parts.theme)], pairSheets(pair)),
    ),
    sourcesBlock(pairs),
  ];
}

/** Where the figures above were seen, so that a reader can find them. */
function sourcesBlock(pairs: readonly PairVerdict[]): Markup | null {
  const seen = sourcesSeen(pairs.flatMap((pair) => sheetsOf(pair).map(({ why }) => why)));
  if (seen.length === 0) return null;
  const lines = seen.map(({ says, address }) =>
    tag('p', { class: 'step' }, address === null ? says : `${says}: ${address}`),
  );
  return block('Where the figures were seen', lines);
}

const pairSheets = (pair: PairVerdict): readonly Content[] =>
  sheetsOf(pair).flatMap(({ title, why }) => [tag('p', { class: 'step' }, title), sheetTable(why)]);

function sheetTable(why: Because): Markup {
  const rows = workedSheet(why).map(({ label, text, value, confirmed, result }) => [
    label,
    text,
    result === true ? tag('b', {}, value) : value,
    knownSign(confirmed),
  ]);
  const columns = [{ title: '' }, { title: '' }, { title: '', figures: true }, { title: '' }];
  return table(columns, rows, 'steps') ?? raw('');
}
