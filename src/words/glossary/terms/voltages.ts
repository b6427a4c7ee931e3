// Voltages, fields and what they break.

import { term, type Term } from './term.ts';

export const voltageTerms: readonly Term[] = [
  term(
    'working-voltage',
    'working voltage',
    'The highest voltage between two circuits in normal use, as rms and as peak.',
    ['transient', 'peak', 'rms'],
    { also: ['working voltages'] },
  ),
  term('rms', 'rms', 'The value of a voltage that heats like a steady one of the same size.', [
    'peak',
    'working-voltage',
  ]),
  term('peak', 'peak', 'The highest value that a voltage reaches again and again.', [
    'rms',
    'working-voltage',
  ]),
  term(
    'transient',
    'transient',
    'A short surge that comes with the mains; clearances are made for it.',
    ['overvoltage-category', 'clearance'],
    { also: ['mains transient', 'withstand voltage', 'transients'] },
  ),
  term(
    'overvoltage-category',
    'overvoltage category',
    'How near a device stands to the origin of the mains, from I to IV; most plugged devices are II.',
    ['transient'],
    { also: ['category'] },
  ),
  term(
    'temporary-overvoltage',
    'temporary overvoltage',
    'A higher mains voltage for seconds to hours after a fault in the network.',
    ['transient'],
  ),
  term(
    'electric-strength-test',
    'electric strength test',
    'A high voltage for a minute between two circuits; it finds holes and wrong parts, not short creepage.',
    ['high-frequency-level', 'transient'],
    { also: ['flash test', 'withstand test', 'test voltage'] },
  ),
  term(
    'strength',
    'electric strength',
    'How many volts a solid holds for each millimetre of its thickness, or for each ply.',
    ['electric-strength-test', 'ply', 'breakdown'],
  ),
  term(
    'high-frequency-level',
    'high-frequency level',
    'The test level for solids that are stressed above 30 kHz, raised because they hold less there.',
    ['electric-strength-test', 'reduction-factor'],
  ),
  term(
    'reduction-factor',
    'reduction factor K_R',
    'How much of its strength a material keeps at a high frequency.',
    ['high-frequency-level'],
    { also: ['K_R'] },
  ),
  term(
    'partial-discharge',
    'partial discharge',
    'A small discharge in an air gap beside solid insulation that wears the solid away.',
    ['inception-voltage', 'electric-strength-test'],
  ),
  term('inception-voltage', 'inception voltage', 'The voltage at which partial discharge begins.', [
    'partial-discharge',
  ]),
  term(
    'field',
    'electric field',
    'How steeply the voltage falls from place to place.',
    ['field-strength', 'equipotential', 'partial-discharge'],
    { also: ['field'] },
  ),
  term(
    'field-strength',
    'field strength',
    'Volts per millimetre at one place; where it is high in air, air breaks down.',
    ['field', 'breakdown'],
    { also: ['electric field strength'] },
  ),
  term(
    'equipotential',
    'equipotential',
    'A line on which the voltage is the same everywhere.',
    ['field', 'field-strength'],
    { also: ['equipotentials'] },
  ),
  term(
    'breakdown',
    'breakdown',
    'The moment in which air or a solid stops insulating.',
    ['clearance', 'electric-strength-test', 'paschen'],
    { also: ['breaks down'] },
  ),
  term(
    'paschen',
    'curve of Paschen',
    'The voltage at which a gap of air breaks down, by its length and the pressure of the air.',
    ['breakdown', 'altitude', 'clearance'],
    { also: ['Paschen'] },
  ),
  term(
    'capacitance',
    'capacitance',
    'How much charge two conductors hold at a voltage; it lets current through the barrier.',
    ['touch-current', 'bridging-part'],
    { also: ['capacitances', 'capacitor'] },
  ),
];
