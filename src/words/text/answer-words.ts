// The words of a verdict. Never "safe", never "compliant": meets, falls short or not shown, for a named edition.

import type { Verdict } from '#judge/verdict/verdict.ts';
import type { SpotKind } from '#judge/verdict/spot.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { ruleBook } from '#books/shelf.ts';

export const answerWords = (answer: Answer): string => ANSWERS[answer];

const ANSWERS: Readonly<Record<Answer, string>> = {
  meets: 'meets',
  'falls-short': 'falls short',
  'not-shown': 'not shown',
};

/** `IEC 62368-1, 2018 (edition 3)`; an id without a book stands for itself. */
export function bookWords({ id, edition }: Verdict['rules']): string {
  const [, number, year] = /^(\d+) \((\d{4})\)$/.exec(edition) ?? [];
  const named = year === undefined ? edition : `${year} (edition ${number})`;
  return `${ruleBook(id)?.title ?? id}, ${named}`;
}

/** How far the verdict reaches, wherever it leaves something out. */
export const scopeWords = ({ notJudged }: Verdict): string =>
  notJudged.length === 0 ? '' : 'inside the winding window only';

export const spotWords = (kind: SpotKind): string => SPOTS[kind];

const SPOTS: Readonly<Record<SpotKind, string>> = {
  'unsafe-bridge': 'unsafe bridge',
  'weak-bridge': 'weak bridge',
  'touch-current': 'touch current',
  touching: 'touching',
  'enamel-only': 'enamel only',
  overfull: 'overfull',
  hot: 'too hot',
  'core-bridge': 'over the core',
  'lead-crossing': 'lead crossing its winding',
  'bare-lead': 'bare lead',
  'lead-in-margin': 'lead in the margin',
  'uncovered-tape-edge': 'uncovered tape edge',
  'drifting-tape': 'drifting tape',
  'loose-end': 'loose end',
  'narrow-margin': 'narrow margin',
  'few-plies': 'too few plies',
  'weak-ply': 'weak ply',
  'thin-wall': 'thin wall',
  'short-creepage': 'short creepage',
  'short-clearance': 'short clearance',
};

export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Always printed with a verdict in words. */
export const CAUTION =
  'Mains kills: disconnect, discharge the bulk capacitor and check it with a meter before touching; ' +
  'test voltages are for qualified persons. A test laboratory and local codes decide.';
