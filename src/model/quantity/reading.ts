// What a design file says of one quantity: a value with its half-width, or that nobody knows it.

import type { Quantity } from '#units/quantity.ts';

/** A stated value; `plusMinus` is the half-width of its interval, 0 where none was given. */
export interface Known<Q> {
  readonly kind: 'known';
  readonly value: Q;
  readonly plusMinus: Q;
}

/** Nobody knows. `leftOut`: the file is silent, rather than saying `"unknown"`. */
export interface Unknown {
  readonly kind: 'unknown';
  readonly leftOut: boolean;
}

export type Reading<Q> = Known<Q> | Unknown;

export const unknown: Unknown = { kind: 'unknown', leftOut: false };
export const leftOut: Unknown = { kind: 'unknown', leftOut: true };

/** A value without an interval. */
export const known = <U extends string>(
  value: Quantity<U>,
  plusMinus: Quantity<U> = 0 as Quantity<U>,
): Known<Quantity<U>> => ({ kind: 'known', value, plusMinus });

export const isKnown = <Q>(reading: Reading<Q>): reading is Known<Q> => reading.kind === 'known';
