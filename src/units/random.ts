// Numbers that look random and are the same for the same seed, on every machine.

export interface Random {
  /** From 0 up to 1, 1 left out. */
  readonly part: () => number;
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  readonly oneOf: <T>(choices: readonly [T, ...T[]]) => T;
}

/** A generator of 32 bits of state (the mixing of additive Weyl steps); good for drawing builds, for no secret. */
export function randomOf(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return { part: next, whole, oneOf: (choices) => choices[whole(0, choices.length - 1)]! };
}

/** The generator of one draw of many: the same whichever machine or thread makes the draw. */
export const randomOfDraw = (seed: number, draw: number): Random =>
  randomOf(Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(draw + 1, 0xc2b2ae35));
