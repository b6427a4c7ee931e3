// The draws shared among so many workers, each a run of numbers: which piece is drawn hangs on its number only, so that the
// answer is the same however they are shared.

/** Fewer than these are not worth another worker. */
const LEAST = 50;

/** First and one past the last of each. */
export function sharesOfDraws(draws: number, workers: number): readonly (readonly [number, number])[] {
  const parts = Math.max(1, Math.min(workers, Math.floor(draws / LEAST)));
  const at = (part: number): number => Math.round((draws * part) / parts);
  return Array.from({ length: parts }, (_, part) => [at(part), at(part + 1)] as const);
}
