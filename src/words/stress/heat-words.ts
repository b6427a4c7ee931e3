// Heat in words: the class of the system and what sets it, what is left to the hottest spot, life by the rule of thumb.

import type { Design } from '#model/design.ts';
import type { HeatLimits } from '#stress/heat/heat-limits.ts';
import type { Heat } from '#stress/heat/heat.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { materialWords } from '#words/design/material-words.ts';

export function heatLines(
  { system, hottest, plusMinus, condition, limits, life, unknown }: Heat,
  design: Design,
): readonly string[] {
  const setBy = [...new Set(system?.setBy.map(({ material }) => materialWords(material)) ?? [])].join('; ');
  const give = plusMinus > 0 ? ` ± ${plusMinus} K` : '';
  return [
    system === null
      ? 'no thermal class is known of any material in the file'
      : `class ${system.thermalClass} °C, set by ${setBy}`,
    ...(hottest === null ? ['no hottest temperature is given: heat is not judged'] : []),
    ...(hottest !== null && limits === null
      ? ['the rule book has no limits for it: heat is not judged']
      : []),
    ...(hottest === null || limits === null
      ? []
      : [`hottest ${hottest}${give} °C in ${condition} use; the rule book allows ${allowedWords(limits)}`]),
    ...(life === null
      ? []
      : [
          `rule of thumb, no promise: ${hours(life.byHalving)} at that temperature (10 K halve it); by activation energies from 0.8 to 1.1 eV ${hours(life.byArrhenius[0])} to ${hours(life.byArrhenius[1])}`,
        ]),
    `class not known: ${unknown.map((field) => fieldWords(design, field)).join('; ')}`,
  ];
}

/** `120 °C, 110 °C if a thermocouple read it` */
function allowedWords({ best, worst, methodOpen, classOpen }: HeatLimits): string {
  if (best.value === worst.value) return `${best.value} °C as it was read`;
  const why = [
    ...(methodOpen ? ['if a thermocouple read it'] : []),
    ...(classOpen ? ['if what has no class is of the lowest'] : []),
  ];
  return `${best.value} °C, ${worst.value} °C ${why.join(' and ')}`;
}

/** Two digits say all that a rule of thumb can. */
const hours = (value: number): string => `${Number(value.toPrecision(2)).toLocaleString('en')} h`;
