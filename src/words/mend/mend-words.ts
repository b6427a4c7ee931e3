// A mend in words: what is changed, what it costs, what limits the build then, and why there is none.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { Change } from '#mend/acts/act.ts';
import type { Cost } from '#mend/search/cost.ts';
import { NEARLY_ALL, type Held } from '#mend/hold/slack.ts';
import type { HeldMending } from '#mend/hold/held-mends.ts';
import type { Left } from '#mend/search/left-out.ts';
import type { Proposal } from '#mend/search/mend.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { answerWords } from '#words/text/answer-words.ts';
import { listed } from '#words/paths/path-words.ts';
import { circuitNames } from './circuit-names.ts';
import { changedEnds, entryWords } from './entry-words.ts';
import { heldWords } from './held-words.ts';
import { noMendWords } from './no-mend-words.ts';
import { lengthDown, lengthNear, lengthPlain, lengthUp } from '#words/text/number-words.ts';

/** `left margin, layer 3: 2 mm -> 2.85 mm`, or what layer is put in. */
export function changeWords({ field, from, to }: Change, doc: DesignFile): string {
  if (from === null && field.startsWith('layers[') && !field.includes('.'))
    return `new layer ${Number(field.slice(7, -1)) + 1}: ${entryWords(to)}`;
  if (field === 'layers') return `order of layers: ${orderWords(from)} -> ${orderWords(to)}`;
  if (field.endsWith('.anchored'))
    return `${fieldWords(doc, field)}: taped down, to be shown by the winding instruction`;
  if (isUncounted({ field, from })) return `${fieldWords(doc, field)}: count them first -> ${entryWords(to)}`;
  const [was, is] = changedEnds(from, to);
  return `${fieldWords(doc, field)}: ${entryWords(was)} -> ${entryWords(is)}`;
}

/** All that one act changes, with its target; both margins of a layer at once, that they are filled goes without saying. */
export function actWords(changes: readonly Change[], doc: DesignFile): string {
  const told = changes.filter(({ field }) => !field.endsWith('.filled'));
  return (told.length === 0 ? changes : told)
    .flatMap((change, _, all) => {
      const other = oppositeOf(change.field);
      const twin = all.find(({ field, to }) => field === other && to === change.to);
      if (twin === undefined) return [targetWords(change, doc)];
      return /\.left\./.test(change.field)
        ? [targetWords(change, doc).replace('left margin', 'both margins')]
        : [];
    })
    .join('; ');
}

const oppositeOf = (field: string): string | null =>
  /\.margins\.(left|right)\.width$/.test(field)
    ? field.replace(/\.(left|right)\./, (_, side: string) => (side === 'left' ? '.right.' : '.left.'))
    : null;

/** Plies that nobody counted are counted before any is added. */
const isUncounted = ({ field, from }: Pick<Change, 'field' | 'from'>): boolean =>
  field.endsWith('.plies') && from === 'unknown';

/** `left margin, layer 3 to 2.45 mm (now 1.65 mm)`. */
function targetWords(change: Change, doc: DesignFile): string {
  const { field, from, to } = change;
  if (from === null && field.startsWith('layers[') && !field.includes('.')) return changeWords(change, doc);
  if (isUncounted(change))
    return `count the ${fieldWords(doc, field)} first; ${String(to)} if there are fewer`;
  return `${fieldWords(doc, field)} to ${entryWords(to)} (now ${from === null ? 'none' : entryWords(from)})`;
}
/** The same of several, both sides of a layer as one, and a margin that is filled told with its width. */
export function changesWords(changes: readonly Change[], doc: DesignFile): readonly string[] {
  const widths = new Set(changes.map(({ field }) => field.replace(/\.width$/, '.filled')));
  const told = changes.filter(
    ({ field }) => field !== 'evidence' && (!field.endsWith('.filled') || !widths.has(field)),
  );
  const isLike = (a: Change, b: Change): boolean =>
    JSON.stringify([a.from, a.to]) === JSON.stringify([b.from, b.to]);
  return told.flatMap((change) => {
    const other = (side: string, beside: string) =>
      told.find((one) => one.field === change.field.replace(side, beside) && isLike(one, change));
    if (change.field.includes('.right.') && other('.right.', '.left.') !== undefined) return [];
    const words = changeWords(change, doc);
    const isBoth = change.field.includes('.left.') && other('.left.', '.right.') !== undefined;
    return [
      isBoth ? words.replace('left margin', 'both margins').replace('left inset', 'both insets') : words,
    ];
  });
}

const orderWords = (layers: unknown): string =>
  (layers as DesignFile['layers'])
    .map((layer) => (layer.kind === 'winding' ? layer.winding : layer.kind))
    .join(', ');

/** What a mend takes of the window; empty where it takes nothing. */
export function costWords({ height, width, plies, fill, coupling }: Cost): string {
  const parts = [
    height === 0 ? '' : `${signedLength(height)} ${lengthUnit()} of height`,
    width === 0 ? '' : `${signedLength(width)} ${lengthUnit()} of winding width`,
    plies === 0 ? '' : `${signed(plies)} ${Math.abs(plies) === 1 ? 'ply' : 'plies'}`,
    coupling === 0
      ? ''
      : `primary and output ${lengthNear(Math.abs(coupling))} ${lengthUnit()} ${coupling > 0 ? 'further apart' : 'nearer'}`,
    `window ${Math.round(fill * 100)} % full`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}

const signedLength = (value: number): string =>
  lengthUnit() === 'mm' ? signed(value) : `${value > 0 ? '+' : '−'}${lengthPlain(Math.abs(value))}`;

const signed = (value: number): string => `${value > 0 ? '+' : '−'}${Math.abs(Number(value.toFixed(2)))}`;

/** What holds the mended build: the pair that is nearest to what is asked. */
export function limitWords({
  pairs,
}: Verdict): { readonly pair: readonly [string, string]; readonly says: string } | null {
  const tight = pairs
    .flatMap((pair) => {
      const { length, required, metric } = pair.limiting ?? { length: null, required: null, metric: null };
      return pair.needed === null || length === null || required === null || required === 0
        ? []
        : [{ pair, length, required, metric, slack: length / required }];
    })
    .sort((a, b) => a.slack - b.slack)[0];
  return tight === undefined
    ? null
    : {
        pair: tight.pair.between,
        says: `${tight.metric} ${lengthDown(tight.length)} of ${lengthUp(tight.required)} ${lengthUnit()}${pliesHold(tight.pair)}`,
      };
}

/** Where a path shorter than asked still does, for the plies that it goes through. */
const pliesHold = ({ limiting, achieved }: Verdict['pairs'][number]): string =>
  limiting === null || limiting.plies === 0 || (limiting.length ?? 0) >= (limiting.required ?? 0)
    ? ''
    : `, and ${limiting.plies === 1 ? 'one ply' : `${limiting.plies} plies`}: ${achieved}`;

/** A proposal as lines of text. */
export function proposalLines(
  proposal: Proposal,
  held: Held | undefined,
  doc: DesignFile,
  place: number,
  all: readonly Proposal[],
): readonly string[] {
  const limit = limitWords(proposal.verdict);
  return [
    `${place}. ${mendTitle(proposal)}${place === 1 ? ', the first: ' : ': '}${rankWords(proposal, all)}`,
    ...changesWords(proposal.changes, doc).map((words) => `   ${words}`),
    `   costs ${costWords(proposal.cost)}`,
    ...(held === undefined ? [] : [`   ${heldWords(held, doc)}`]),
    ...(limit === null ? [] : [`   limits next: ${circuitNames(limit.pair, doc)}, ${limit.says}`]),
    ...[stillOpenWords(proposal.verdict, doc), coreWords(proposal.verdict)]
      .filter(Boolean)
      .map((words) => `   ${words}`),
  ];
}

export const mendingLines = (
  { proposals, none, held, leftOut }: HeldMending,
  doc: DesignFile,
): readonly string[] => [
  ...(none === null
    ? proposals.flatMap((proposal, i) => proposalLines(proposal, held[i], doc, i + 1, proposals))
    : [noMendWords(none, doc)]),
  ...(leftOut.length === 0 ? [] : ['Looked at and left out:']),
  ...leftOut.map((left) => `   ${leftWords(left, doc)}`),
];

/** What was tried, and what it reaches. */
export const leftWords = (left: Left, doc: DesignFile): string =>
  `${changesWords(left.changes, doc).join('; ')}: ${reachedWords(left, doc)}`;

/** `5.18 of 5.6 mm, Primary to Output`. */
export function reachedWords({ overfull, pair }: Left, doc: DesignFile): string {
  const full = overfull ? ['does not fit its window'] : [];
  if (pair === null) return full[0] ?? 'a spot of the whole build stays';
  const { length, required, achieved, needed, between } = pair;
  const figure =
    length === null || required === null || length >= required
      ? `${achieved}, ${needed} is needed`
      : `${lengthDown(length)} of ${lengthUp(required)} ${lengthUnit()}`;
  return [`${figure}, ${circuitNames(between, doc)}`, ...full].join('; ');
}

/** The name of a mend, by what is done: `wider margin and sleeve`. */
export function mendTitle({ acts }: Proposal): string {
  const kinds = [...new Set(acts.map(({ kind }) => TITLES[kind]))];
  const said = listed(kinds);
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}`;
}

const TITLES: Readonly<Record<Proposal['acts'][number]['kind'], string>> = {
  margin: 'wider margin',
  fill: 'margin filled',
  plies: 'more plies',
  'tape-between': 'tape between',
  'tape-wide': 'tape to the flange',
  sleeve: 'sleeve',
  slot: 'lead through the slot',
  wire: 'wire of three certified layers',
  wrap: 'tape round the core',
  wall: 'thicker tube',
  'outer-gap': 'more air to the core',
  height: 'former with a higher window',
  width: 'former with a wider window',
  bridge: 'part of the right class',
  bond: 'core bonded',
  'tape-down': 'ends taped down',
  order: 'other order of layers',
};

/** Why it stands where it stands in the ranking, beside the others. */
export function rankWords(proposal: Proposal, all: readonly Proposal[]): string {
  const { cost } = proposal;
  const fewest = Math.min(...all.map(({ acts }) => acts.length));
  const reasons = [
    proposal.acts.length === fewest && all.some(({ acts }) => acts.length > fewest) ? 'fewest acts' : '',
    cost.height <= 0 ? 'no height' : '',
    cost.plies <= 0 ? 'no ply' : '',
    cost.width <= 0 ? 'no width' : '',
    proposal.acts.some(({ kind }) => BOUGHT.has(kind))
      ? 'something else has to be bought'
      : 'nothing else has to be bought',
  ];
  return reasons.filter((reason) => reason !== '').join(', ');
}

const BOUGHT: ReadonlySet<string> = new Set(['wire', 'wall', 'height', 'width', 'bridge']);

/** `+2`, a dash where nothing changes. */
export const costFigure = (value: number): string => (value === 0 ? '–' : signed(value));

/** `+0.30 mm`, a dash where nothing changes. */
export const costLength = (value: number): string =>
  value === 0 ? '–' : `${signedLength(value)} ${lengthUnit()}`;

/** The pairs that this mend leaves not shown, for want of a fact; empty where it leaves none. */
export function stillOpenWords({ pairs }: Verdict, doc: DesignFile): string {
  const open = pairs
    .filter(({ verdict }) => verdict === 'not-shown')
    .map(({ between }) => circuitNames(between, doc));
  return open.length === 0 ? '' : `${listed(open)} ${open.length === 1 ? 'stays' : 'stay'} not shown.`;
}

/** What the core counted with the mains side makes of it; empty where that is no question. */
export const coreWords = ({ coreAsPrimary }: Verdict): string =>
  coreAsPrimary === null
    ? ''
    : `With the core counted as primary it ${coreAsPrimary.verdict === 'not-shown' ? 'is ' : ''}${answerWords(coreAsPrimary.verdict)}.`;

/** What the first way does, and that it holds on paper only where pieces wound so do not. `held`: null while it is not known. */
export function firstWayWords({ changes }: Proposal, held: Held | null, doc: DesignFile): string {
  const acts = changesWords(changes, doc).join('; ');
  if (held === null) return `Mended on paper by ${acts}.`;
  return held.drawn > 0 && !held.isCut && held.share >= NEARLY_ALL
    ? `Mended by ${acts}.`
    : `Mended on paper by ${acts}; ${heldWords(held, doc)}.`;
}
