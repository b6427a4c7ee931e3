// The unit part of the conversion library alone, over plain numbers: its general form also brings matrices, fractions
// and complex numbers, which cost a third of a second at every start of the command line and half of the page's script.

import { createFractionClass, createUnitClass } from 'mathjs';

/** Throws on a unit that the library does not know. */
export const unitLibrary = () => {
  const Unit = createUnitClass({
    config: { number: 'number', predictable: true },
    addScalar: (a, b) => a + b,
    subtractScalar: (a, b) => a - b,
    multiplyScalar: (a, b) => a * b,
    divideScalar: (a, b) => a / b,
    pow: (a, b) => a ** b,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    equal: (a, b) => a === b,
    isNumeric: (value) => typeof value === 'number',
    format: String,
    number: Number,
    // the degree Fahrenheit is defined by a fraction; numbers of the other kinds are never made here, but asked for
    Fraction: createFractionClass(),
    Complex: {},
    BigNumber: {},
  });
  return (value: number, unit: string): { readonly toNumber: (base: string) => number } =>
    new Unit(value, unit);
};
