// The converter about the coil, and heat.

import { term, type Term } from './term.ts';

export const converterTerms: readonly Term[] = [
  term(
    'flyback',
    'flyback transformer',
    'A transformer that stores energy in its gap while the switch is on and gives it out when it is off.',
    ['reflected-voltage', 'primary'],
    { also: ['flyback'] },
  ),
  term(
    'converter',
    'converter',
    'The circuit that switches the direct voltage on and off across the transformer.',
    ['flyback', 'duty', 'conduction-mode'],
  ),
  term(
    'conduction-mode',
    'continuous and discontinuous',
    'Whether the transformer gives out all its energy before the switch closes again, or keeps some.',
    ['converter', 'flyback'],
    { also: ['continuous', 'discontinuous', 'conduction mode'] },
  ),
  term('duty', 'duty', 'The part of a switching period in which the switch is on.', [
    'converter',
    'conduction-mode',
  ]),
  term(
    'reflected-voltage',
    'reflected voltage',
    'The output voltage as the primary sees it, by the ratio of turns, while the switch is off.',
    ['flyback', 'clamp-overshoot'],
  ),
  term(
    'clamp-overshoot',
    'clamp overshoot',
    'The spike above the reflected voltage in the moment of switching off.',
    ['reflected-voltage', 'peak'],
  ),
  term(
    'bulk-capacitor',
    'bulk capacitor',
    'The capacitor behind the mains rectifier, charged to the peak of the mains.',
    ['rectified-mains', 'peak'],
  ),
  term(
    'rectified-mains',
    'rectified mains',
    'The mains turned into a direct voltage of about its peak.',
    ['bulk-capacitor', 'peak', 'boosted-rail'],
    { also: ['rectified'] },
  ),
  term(
    'boosted-rail',
    'boosted rail',
    'A direct voltage that a stage in front of the converter holds above the peak of the mains.',
    ['rectified-mains', 'bulk-capacitor'],
    { also: ['rail'] },
  ),
  term(
    'thermal-class',
    'thermal class',
    'The temperature that a material stands for its life, as a number or letter.',
    ['hottest-spot'],
    { also: ['class 130', 'class'] },
  ),
  term(
    'hottest-spot',
    'hottest insulation',
    'The highest temperature of any insulation in the coil in normal use.',
    ['thermal-class'],
    { also: ['hot spot'] },
  ),
  term(
    'thermocouple',
    'thermocouple',
    'Two wires that tell the temperature of one spot, which may not be the hottest.',
    ['hottest-spot', 'thermal-class'],
    { also: ['thermocouples'] },
  ),
];
