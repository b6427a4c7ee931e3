// Distances: along surfaces, through air and through solids, and what they are judged by.

import { term, type Term } from './term.ts';

export const distanceTerms: readonly Term[] = [
  term(
    'creepage-distance',
    'creepage distance',
    'The shortest way between two conductors along the surfaces of solid insulation.',
    ['clearance', 'tracking', 'pollution-degree', 'joint'],
    {
      also: ['creepage'],
      counts:
        'Joints between two solids count as surfaces; a gap narrower than the bridging width is taken as crossed.',
    },
  ),
  term(
    'clearance',
    'clearance',
    'The shortest way between two conductors through air.',
    ['creepage-distance', 'transient', 'altitude'],
    { also: ['air distance', 'clearances'] },
  ),
  term(
    'through-insulation',
    'distance through insulation',
    'The thickness of solid insulation that a straight line between two conductors passes.',
    ['least-thickness', 'ply', 'thin-sheet'],
    { also: ['through solids'] },
  ),
  term(
    'bridging-width',
    'bridging width X',
    'The width under which a gap in a surface counts as crossed, because dirt fills it.',
    ['creepage-distance', 'pollution-degree'],
    { also: ['X'] },
  ),
  term(
    'joint',
    'joint',
    'Where two solids only touch; it counts as a surface, for it is no insulation.',
    ['creepage-distance', 'cemented', 'ply'],
    { also: ['joints'] },
  ),
  term(
    'cemented',
    'cemented joint',
    'A joint that is filled without voids and shown to stay so; then it is solid insulation.',
    ['joint', 'potting'],
    { also: ['cemented'] },
  ),
  term(
    'weakest-path',
    'weakest path',
    'The way between two circuits that is worth the least of all ways.',
    ['creepage-distance', 'clearance', 'grade'],
    { also: ['path', 'way'] },
  ),
  term(
    'weak-spot',
    'weak spot',
    'A place where what is asked between two circuits is not reached, or not shown.',
    ['weakest-path', 'grade'],
    { also: ['weak spots'] },
  ),
  term(
    'section',
    'section',
    'The cut through the window that is drawn and judged: plain, with a lead laid in, or slumped.',
    ['window', 'slumped', 'lead-out'],
    { also: ['sections'] },
  ),
  term(
    'core-bridge',
    'way over the core',
    'A path from one circuit to the core and from there to another; the two parts add up.',
    ['floating', 'core'],
    { also: ['over the core'] },
  ),
  term(
    'altitude',
    'altitude',
    'Height of the place of use; thin air holds less, so clearances grow above 2000 m.',
    ['clearance'],
  ),
  term(
    'pollution-degree',
    'pollution degree',
    'How much dirt and damp is to be expected on surfaces, from 1 (none) to 3 (conducting).',
    ['creepage-distance', 'material-group'],
    { also: ['degree of pollution'] },
  ),
  term(
    'material-group',
    'material group',
    'How well a surface resists tracking, from I (best) to IIIb (worst or unknown).',
    ['tracking', 'creepage-distance'],
    { also: ['tracking group', 'group'] },
  ),
  term('tracking', 'tracking', 'A conducting track that small discharges burn into a dirty surface.', [
    'material-group',
    'pollution-degree',
  ]),
];
