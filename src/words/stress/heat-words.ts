// Heat in words: the class of the system and what sets it, what is left to the hottest spot, life by the rule of thumb.

import type { Design } from '#model/design.ts';
import type { Heat } from '#stress/heat/heat.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { materialWords } from '#words/design/material-words.ts';

export function heatLines(
  { system, hottest, reserve, allowed, life, unknown }: Heat,
  design: Design,
): readonly string[] {
  if (system === null) return ['no thermal class is known of any material in the file'];
  const setBy = [...new Set(system.setBy.map(({ material }) => materialWords(material)))].join('; ');
  return [
    `class ${system.thermalClass} °C, set by ${setBy}`,
    ...(allowed === null ? [] : [`in normal use this class is allowed ${allowed.value} °C by the rule book`]),
    ...(hottest === null || reserve === null
      ? ['no hottest temperature is given: heat is not judged']
      : [
          `hottest ${hottest} °C: ${left(reserve.asRead)} the class as read, ${left(reserve.byThermocouple)} it if a thermocouple read it`,
        ]),
    ...(life === null
      ? []
      : [
          `rule of thumb, no promise: ${hours(life.byHalving)} at that temperature (10 K halve it); by activation energies from 0.8 to 1.1 eV ${hours(life.byArrhenius[0])} to ${hours(life.byArrhenius[1])}`,
        ]),
    `class not known: ${unknown.map((field) => fieldWords(design, field)).join('; ')}`,
  ];
}

const left = (kelvin: number): string => (kelvin < 0 ? `${-kelvin} K over` : `${kelvin} K under`);

/** Two digits say all that a rule of thumb can. */
const hours = (value: number): string => `${Number(value.toPrecision(2)).toLocaleString('en')} h`;
