// The former and the core.

import { term, type Term } from './term.ts';

export const formerTerms: readonly Term[] = [
  term('former', 'former', 'The moulded part that carries the coil: tube and flanges.', [
    'tube',
    'flange',
    'chamber',
  ]),
  term('tube', 'tube', 'The part of the former that the coil is wound on, with the core inside.', [
    'former',
    'wall',
  ]),
  term('wall', 'wall', 'The thickness of the former’s tube, between the coil and the core.', [
    'tube',
    'least-thickness',
  ]),
  term('flange', 'flange', 'The upright end of the former; a tape’s edge ends there.', ['former', 'margin'], {
    also: ['flanges', 'cheek'],
  }),
  term('chamber', 'chamber', 'One of several winding spaces beside each other.', ['divider', 'former'], {
    also: ['chambers'],
  }),
  term('divider', 'divider', 'The wall of the former between two chambers.', ['chamber', 'flange'], {
    also: ['dividers'],
  }),
  term(
    'window',
    'winding window',
    'The space between tube, flanges and core in which the coil lies.',
    ['former', 'core', 'section'],
    { also: ['window'] },
  ),
  term('core', 'core', 'The ferrite that carries the flux; a conductor for every judgement.', [
    'floating',
    'window',
    'core-bridge',
  ]),
];
