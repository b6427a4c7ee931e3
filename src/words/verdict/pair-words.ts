// A pair of circuits in words: its names, its limiting figure against the required one, and one sentence.

import { lengthUnit } from '#words/text/length-unit.ts';
import { isWhatever, leadingPath } from '#words/paths/leading-path.ts';
import { reaches } from '#standards/ladder.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { Limiting, PairVerdict } from '#judge/verdict/pair.ts';
import { unreachable } from '#units/unreachable.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import { conditionWords } from '#words/unknowns/condition-words.ts';
import { marginSentence } from '#words/paths/margin-words.ts';
import { frequency, lengthDown, lengthUp } from '#words/text/number-words.ts';
import { listed, solidsCrossed } from '#words/paths/path-words.ts';
import { spotMend, spotSays } from '#words/spots/spot-says.ts';
import { answerWords } from '#words/text/answer-words.ts';

/** `Primary to Output`; what is no circuit (core, a screen, a part) goes by its own name. */
export function pairNames(between: readonly [string, string], looks: readonly CircuitLook[]): string {
  return between.map((id) => nameOf(id, looks)).join(' to ');
}

export const nameOf = (id: string, looks: readonly CircuitLook[]): string =>
  looks.find(({ circuit }) => circuit === id)?.name ?? id;

/** `creepage 4.83 of 5.6 mm`; empty where nothing is asked. */
export function limitingFigure(limiting: Limiting | null): string {
  if (limiting === null) return '';
  const { metric, bridge, length, required } = limiting;
  if (metric === 'bridge') return `bridging part ${bridge ?? ''}`.trimEnd();
  if (length === null) return `${metric}, solid insulation alone`;
  const figure = `${metric} ${lengthDown(length)}${required === null ? '' : ` of ${lengthUp(required)}`} ${lengthUnit()}`;
  if (limiting.outside.length > 0 && limiting.over.length === 0) return `${figure}, outside the window`;
  return isTooShort(limiting) ? `${figure}, each piece too short to count` : figure;
}

/** Pieces of a path over conductors count for nothing where each is too short by itself. */
export const isTooShort = ({ length, legs }: Limiting): boolean =>
  length === 0 && legs.some((leg) => leg.length > 0);

/** Why the pair stands where it stands, in one sentence. */
export function pairSentence(pair: PairVerdict, looks: readonly CircuitLook[]): string {
  const [a = '', b = ''] = pair.between.map((id) => nameOf(id, looks));
  if (pair.required === null) return `Between ${a} and ${b} nothing is asked.`;
  if (isUndrawn(pair)) return undrawnWords(pair, looks);
  const asked = `Between ${a} and ${b} ${pair.needed} insulation is asked`;
  const leading = leadingPath(pair);
  const why = `${limitingWords(leading)}${conditionWords(leading?.conditions ?? [])}`;
  switch (pair.verdict) {
    case 'meets':
      return `${asked} and ${pair.achieved} is reached${why}.`;
    case 'falls-short':
      return isWhatever(pair)
        ? `${asked}; whatever the unknowns are, at most ${leading?.grade ?? pair.achieved} is reached${why}.`
        : `${asked}, ${pair.achieved} is reached${why}.`;
    case 'not-shown':
      return reaches(pair.achieved, pair.needed)
        ? `${asked} and ${pair.achieved} is reached${why}. ${openWords(pair)}`
        : `${asked}; no more than ${pair.achieved} is shown${why}. ${openWords(pair)}`;
    default:
      return unreachable(pair.verdict);
  }
}

/** Nothing of one circuit is drawn, so that there is nothing to judge. */
export const isUndrawn = ({ undrawn, verdict }: PairVerdict): boolean =>
  undrawn.length > 0 && verdict === 'not-shown';

function undrawnWords({ undrawn, between }: PairVerdict, looks: readonly CircuitLook[]): string {
  const missing = undrawn.map((id) => nameOf(id, looks)).join(' or ');
  return `No winding of ${missing} is drawn: there is nothing to judge between ${between
    .map((id) => nameOf(id, looks))
    .join(' and ')}.`;
}

/** What keeps a pair from being shown. */
export function openWords(pair: PairVerdict): string {
  const { achieved, needed, achievedAtBest, stress, unplaced, beyond } = pair;
  if (beyond.length > 0) return beyondWords(pair);
  if (!reaches(achieved, needed)) return `With every unknown at its best it would be ${achievedAtBest}.`;
  // it reaches what is needed at the floor of the voltage, or as long as no outer part bridges it
  const voltage = `That holds for ${Math.round(stress.rms)} V rms, the least it can be: the working voltage is not known.`;
  const parts = `Where ${listed(unplaced)} ${unplaced.length === 1 ? 'lies' : 'lie'} is not said: it may bridge them.`;
  return [...(stress.basis === 'floor' ? [voltage] : []), ...(unplaced.length > 0 ? [parts] : [])].join(' ');
}

/** `The rule book has no figure for the creepage at 250 V rms, 500 V peak, 450 kHz: it is beyond its tables.` */
export function beyondWords({ beyond, stress }: PairVerdict): string {
  const figures = listed(beyond.map((figure) => BEYOND[figure]));
  const at = `${Math.round(stress.rms)} V rms, ${Math.ceil(stress.peak)} V peak, ${frequency(stress.frequency)}`;
  return `The rule book has no figure for the ${figures} here (${at}): that is beyond its tables.`;
}

const BEYOND = {
  clearance: 'clearance',
  creepage: 'creepage',
  test: 'electric strength test',
  solid: 'solid insulation',
} as const;

function limitingWords(limiting: Limiting | null): string {
  if (limiting === null) return '';
  const { metric, length, required, over, legs, outside } = limiting;
  if (metric === 'bridge') return `, limited by ${limiting.bridge ?? 'a part'}, which bridges the two`;
  if (length === null) return ', limited by solid insulation alone';
  const needed = required === null ? '' : ` where ${lengthUp(required)} ${lengthUnit()} is needed`;
  const crossed = solidsCrossed(legs);
  const through = crossed.length === 0 ? '' : `, through ${listed(crossed)}`;
  const way =
    over.length === 0 ? '' : `, over ${listed(over.map((id) => (id === 'core' ? 'the core' : id)))}`;
  if (length > 0)
    return `: the ${wayOf(metric, outside, over)} is ${lengthDown(length)} ${lengthUnit()}${needed}${through}${way}`;
  // no figure to set against what is needed: they touch, a solid lies between, or each piece is too short to count
  if (isTooShort(limiting))
    return `: every piece of the ${wayOf(metric, outside, over)} is too short to count${needed}${through}${way}`;
  if (crossed.length > 0)
    return `: only ${listed(crossed)} ${isOne(crossed) ? 'lies' : 'lie'} between them${way}`;
  if (over.length > 0) return `: the way${way} is no distance at all`;
  return limiting.grade === 'none' ? ': their bare metal touches' : ': they touch, and enamel is no barrier';
}

/** A distance outside the window goes by the name that the file gives it. */
function wayOf(
  metric: 'creepage' | 'clearance',
  outside: readonly string[],
  over: readonly string[],
): string {
  return outside.length > 0 && over.length === 0
    ? `${metric} outside the window (${outside.join(', ')})`
    : WAYS[metric];
}

const isOne = (crossed: readonly string[]): boolean => crossed.length === 1 && !/^\d/.test(crossed[0] ?? '');

const WAYS = {
  creepage: 'shortest way along surfaces',
  clearance: 'shortest way through air',
} as const;

/**
 * Worst first: falls short, not shown, meets, of which nothing is drawn, nothing asked; among equals the order of the file.
 */
export function worstFirst(verdict: Verdict): readonly PairVerdict[] {
  const rank = (pair: PairVerdict): number =>
    pair.required === null ? 4 : isUndrawn(pair) ? 3 : ORDER.indexOf(pair.verdict);
  return [...verdict.pairs].sort((a, b) => rank(a) - rank(b));
}

const ORDER = ['falls-short', 'not-shown', 'meets'] as const;

/** Name of the section where the worst pair's path lies; the first of `sections`, the plain one, where it has none there. */
export function leadingSection(verdict: Verdict, sections: readonly { readonly name: string }[]): string {
  const [worst] = worstFirst(verdict);
  const section = (worst && leadingPath(worst))?.section ?? null;
  // a distance outside the window lies on no section
  return sections.find(({ name }) => name === section)?.name ?? sections[0]?.name ?? 'plain';
}

/** The one sentence under the verdict: the worst pair's. */
export function headline(verdict: Verdict, looks: readonly CircuitLook[]): string {
  const [worst] = worstFirst(verdict);
  if (worst === undefined || worst.required === null)
    return 'No pair of circuits asks for a barrier, so nothing is judged: are the roles of the circuits right?';
  const tooHot = verdict.weakSpots.find((spot) => spot.between === null && spot.verdict === verdict.verdict);
  if (tooHot !== undefined && worst.verdict === 'meets') return spotSays(tooHot);
  const asked = verdict.pairs.filter((pair) => pair.required !== null && !isUndrawn(pair)).length;
  if (verdict.verdict === 'meets') {
    const all = `${asked === 2 ? 'Both' : `All ${asked}`} pairs that ask for insulation have it.`;
    return `${asked > 1 ? all : pairSentence(worst, looks)}${coreWords(verdict)}`;
  }
  const sentence = marginSentence(worst, (id) => nameOf(id, looks)) ?? pairSentence(worst, looks);
  return `${sentence}${besides(verdict, worst)}`;
}

/** What one figure does not mend: the other spots of the pair, each by what would mend it. */
function besides({ weakSpots }: Verdict, { between, verdict }: PairVerdict): string {
  if (verdict !== 'falls-short') return '';
  const spots = weakSpots.filter((spot) => spot.between?.join() === between.join());
  const [first] = spots;
  const mends = farthest(spots).flatMap((spot) => (spot === first ? [] : [spotMend(spot)]));
  return mends.length === 0 ? '' : ` That alone will not do: ${mends.map(clause).join('; ')}.`;
}

/** One spot for each way to mend: of mends that differ by their figure alone, the one that asks most does for all. */
function farthest(spots: readonly WeakSpot[]): readonly WeakSpot[] {
  const most = new Map<string, WeakSpot>();
  for (const spot of spots) {
    const way = spotMend(spot).replace(/^[\d.]+/, '');
    const before = most.get(way);
    if (way !== '' && (before === undefined || missingOf(spot) > missingOf(before))) most.set(way, spot);
  }
  return [...most.values()];
}

const missingOf = ({ length, required }: WeakSpot): number => (required ?? 0) - (length ?? 0);

/** A sentence as a part of another. */
const clause = (sentence: string): string =>
  `${sentence.charAt(0).toLowerCase()}${sentence.slice(1).replace(/\.$/, '')}`;

/** A laboratory that counts the core with the mains may find otherwise. */
export const coreWords = ({ coreAsPrimary, verdict }: Verdict): string =>
  coreAsPrimary === null || coreAsPrimary.verdict === verdict
    ? ''
    : ` With the core counted as primary it ${coreAsPrimary.verdict === 'not-shown' ? 'is ' : ''}${answerWords(coreAsPrimary.verdict)}.`;

/** `4.83 of 5.6 mm` of a spot; empty where it has no length. */
export function spotFigure({ length, required }: WeakSpot): string {
  if (length === null) return '';
  return required === null
    ? `${lengthDown(length)} ${lengthUnit()}`
    : `${lengthDown(length)} of ${lengthUp(required)} ${lengthUnit()}`;
}

/** `Primary to Output: basic of reinforced, falls short` */
export const pairLine = (pair: PairVerdict, looks: readonly CircuitLook[]): string =>
  pair.required === null
    ? `${pairNames(pair.between, looks)}: nothing is asked`
    : isUndrawn(pair)
      ? `${pairNames(pair.between, looks)}: not judged, for nothing of it is drawn`
      : `${pairNames(pair.between, looks)}: ${answerWords(pair.verdict)}, ${pair.achieved} of ${pair.needed}`;
