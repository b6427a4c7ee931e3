// Two factories that the library exports but its own types leave out.

import 'mathjs';

declare module 'mathjs' {
  type Two = (a: number, b: number) => number;
  type One = (a: number) => number;

  export function createFractionClass(): object;

  export function createUnitClass(parts: {
    readonly config: { readonly number: 'number'; readonly predictable: boolean };
    readonly addScalar: Two;
    readonly subtractScalar: Two;
    readonly multiplyScalar: Two;
    readonly divideScalar: Two;
    readonly pow: Two;
    readonly abs: One;
    readonly fix: One;
    readonly round: One;
    readonly equal: (a: number, b: number) => boolean;
    readonly isNumeric: (value: unknown) => boolean;
    readonly format: (value: number) => string;
    readonly number: (value: unknown) => number;
    readonly Complex: object;
    readonly BigNumber: object;
    readonly Fraction: object;
  }): new (value: number, unit: string) => { readonly toNumber: (base: string) => number };
}
