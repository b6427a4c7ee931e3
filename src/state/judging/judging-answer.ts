// What comes of judging one design, on the page or beside it: the judgement or what broke, and the time that it took.

export type JudgingAnswer<T> =
  | { readonly kind: 'judged'; readonly judgement: T; readonly took: number }
  | { readonly kind: 'broke'; readonly says: string; readonly took: number };

export function judgingAnswer<T>(judge: () => T): JudgingAnswer<T> {
  const start = performance.now();
  const took = (): number => performance.now() - start;
  try {
    const judgement = judge();
    return { kind: 'judged', judgement, took: took() };
  } catch (error) {
    return { kind: 'broke', says: error instanceof Error ? error.message : String(error), took: took() };
  }
}
