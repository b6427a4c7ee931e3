// A set of acts that meets, made as small as it can be: acts that are not needed go, lengths are given back step by step.
// What is left breaks when any one act is taken out.

import type { FileJudge } from '#judge/judging/judge-files.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { applyActs, type Act, type SetAct } from '#mend/acts/act.ts';
import { effortOf } from '#mend/acts/effort.ts';
import { lengthAt, STEP, upToStep, widthText } from '#mend/acts/file-lengths.ts';

/** Yields after each judgement. */
export function* stripped(
  doc: DesignFile,
  acts: readonly Act[],
  judge: Pick<FileJudge, 'reach'>,
): Generator<void, readonly Act[], void> {
  const meets: Meets = function* (some) {
    const found = judge.reach(applyActs(doc, some))?.mended === true;
    yield;
    return found;
  };
  let kept = yield* withoutSpare(acts, meets);
  for (let place = 0; place < kept.length; place += 1) {
    const trial = (smaller: Act) => kept.map((each, i) => (i === place ? smaller : each));
    kept = trial(yield* fewestFields(kept[place]!, (some) => meets(trial(some))));
    kept = trial(yield* leastOf(doc, kept[place]!, (some) => meets(trial(some))));
  }
  // with less of one act another may be spared: a lower block needs no higher window
  const fewer = yield* withoutSpare(kept, meets);
  return fewer.length < kept.length ? yield* stripped(doc, fewer, judge) : kept;
}

/** Each act that the others do without goes, what costs most first. */
function* withoutSpare(acts: readonly Act[], meets: Meets): Generator<void, readonly Act[], void> {
  let kept = acts;
  for (const act of acts.toSorted((a, b) => effortOf(b) - effortOf(a))) {
    const without = kept.filter((each) => each !== act);
    if (without.length > 0 && (yield* meets(without))) kept = without;
  }
  return kept;
}

type Meets<T = readonly Act[]> = (some: T) => Generator<void, boolean, void>;

/** The act with no ply and no length more than meets. */
function* leastOf(doc: DesignFile, act: Act, meets: Meets<Act>): Generator<void, Act, void> {
  if (!('set' in act) || act.amount === null) return act;
  return yield* act.kind === 'plies' ? fewestPlies(act, meets) : leastLengths(doc, act, meets);
}

const SIDED: ReadonlySet<Act['kind']> = new Set(['margin', 'fill', 'tape-wide']);

/** The act with no side, and no filling, that it can spare. */
function* fewestFields(act: Act, meets: Meets<Act>): Generator<void, Act, void> {
  if (!('set' in act) || !SIDED.has(act.kind)) return act;
  let least = act;
  for (const each of act.set) {
    const fewer = { ...least, set: least.set.filter((other) => other !== each) };
    if (fewer.set.length > 0 && (yield* meets(fewer))) least = fewer;
  }
  return least;
}

/** No ply more than meets, by halving. */
function* fewestPlies(act: SetAct, meets: Meets<Act>): Generator<void, SetAct, void> {
  const [{ field, to }] = act.set as readonly [{ readonly field: string; readonly to: number }];
  let [low, high] = [to - (act.amount ?? 1), to];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (yield* meets({ ...act, set: [{ field, to: middle }] })) high = middle;
    else low = middle;
  }
  return { ...act, set: [{ field, to: high }] };
}

/** All lengths of the act brought as near to what they were as still meets, by halving, in steps of the hand. */
function* leastLengths(doc: DesignFile, act: SetAct, meets: Meets<Act>): Generator<void, SetAct, void> {
  const spans = act.set.map(({ field, to }) => {
    const from = lengthAt(doc, field, 0);
    const upTo = lengthOf(to);
    return from === null || upTo === null || upTo <= from ? null : { from, upTo };
  });
  const widest = Math.max(0, ...spans.map((span) => (span === null ? 0 : span.upTo - span.from)));
  let [low, high] = [0, Math.round(widest / STEP)];
  const at = (steps: number): SetAct => ({
    ...act,
    set: act.set.map((each, i) => {
      const span = spans[i];
      if (span === undefined || span === null) return each;
      const to = Math.max(span.from, upToStep(span.upTo - (Math.round(widest / STEP) - steps) * STEP));
      return { field: each.field, to: widthText(doc, each.field, to) };
    }),
  });
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (yield* meets(at(middle))) high = middle;
    else low = middle;
  }
  return high === Math.round(widest / STEP) ? act : at(high);
}

function lengthOf(value: unknown): number | null {
  const text = typeof value === 'object' && value !== null && 'value' in value ? value.value : value;
  const found = typeof text === 'string' ? /^([\d.]+) mm$/.exec(text) : null;
  return found ? Number(found[1]) : null;
}
