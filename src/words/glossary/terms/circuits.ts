// Circuits, and what joins them outside the coil.

import { term, type Term } from './term.ts';

export const circuitTerms: readonly Term[] = [
  term(
    'circuit',
    'circuit',
    'Everything that is joined by metal and so has one voltage towards the rest.',
    ['role', 'winding', 'screen'],
    { also: ['circuits'] },
  ),
  term(
    'role',
    'role of a circuit',
    'What a circuit is towards people: on the mains, touchable, earthed or isolated from all of these.',
    ['circuit', 'grade'],
    { also: ['role', 'mains', 'touchable', 'isolated'] },
  ),
  term(
    'primary',
    'primary',
    'The winding, or circuit, that the mains feeds.',
    ['secondary', 'auxiliary', 'circuit'],
    { also: ['primary side'] },
  ),
  term(
    'secondary',
    'secondary',
    'A winding that gives the output, on the side that a hand may touch.',
    ['primary', 'output'],
    { also: ['secondary side'] },
  ),
  term('output', 'output', 'The circuit that leaves the device and that a hand can touch.', [
    'secondary',
    'role',
  ]),
  term(
    'auxiliary',
    'auxiliary winding',
    'A small winding that feeds the control circuit, mostly on the mains side.',
    ['primary', 'circuit'],
    { also: ['auxiliary'] },
  ),
  term('pair', 'pair', 'Two circuits that are judged against each other.', ['circuit', 'role', 'grade'], {
    also: ['pairs'],
  }),
  term(
    'earth',
    'earth',
    'The protective conductor of the installation, and what is bonded to it.',
    ['screen', 'role'],
    { also: ['protective earthing conductor'] },
  ),
  term(
    'floating',
    'floating part',
    'A conductor that is bonded to nothing, such as a core; it takes on any voltage.',
    ['core', 'screen', 'core-bridge'],
    { also: ['floating'] },
  ),
  term(
    'touch-current',
    'touch current',
    'The current through a person who touches the output, mostly through capacitors across the barrier.',
    ['bridging-part', 'y-capacitor'],
    { also: ['leakage current', 'leakage'] },
  ),
  term(
    'bridging-part',
    'bridging part',
    'A part that joins two circuits on purpose: a capacitor, an optocoupler, a resistor.',
    ['y-capacitor', 'optocoupler', 'unsafe-bridge'],
    { also: ['bridging parts', 'bridges'] },
  ),
  term(
    'y-capacitor',
    'Y capacitor',
    'A capacitor made to stand between mains and touchable parts; Y1 alone is worth reinforced insulation.',
    ['bridging-part', 'touch-current'],
    { also: ['class Y1', 'class Y2', 'Y1', 'Y2'] },
  ),
  term('optocoupler', 'optocoupler', 'A part that passes a signal by light from one circuit to the other.', [
    'bridging-part',
  ]),
  term(
    'unsafe-bridge',
    'unsafe bridge',
    'A part across the barrier that is not made for it: one fault puts the mains on the output.',
    ['bridging-part', 'y-capacitor'],
  ),
];
