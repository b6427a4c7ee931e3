// How long whoever asks waits to hear how mends hold. Rooms below know no clock: who has one hands it in.

/** The part of the time that is spent: from 0, at 1 or more it is over. */
export type Patience = () => number;

/** Seconds that a person waits. */
export const WAITED = 90;

export const FOR_EVER: Patience = () => 0;

/** `now` in seconds; begins when it is first asked. */
export function patienceOf(now: () => number, seconds = WAITED): Patience {
  let began: number | null = null;
  return () => {
    began ??= now();
    return (now() - began) / seconds;
  };
}
