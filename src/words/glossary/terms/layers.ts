// Layers of a coil: windings, tapes, margins, and what holds them.

import { term, type Term } from './term.ts';

export const layerTerms: readonly Term[] = [
  term(
    'layer',
    'layer',
    'One pass of winding, tape or screen, numbered from the tube outward.',
    ['ply', 'winding', 'tape', 'row'],
    { also: ['layers'] },
  ),
  term('winding', 'winding', 'All turns of one wire, in one layer or in several.', ['turn', 'layer', 'row'], {
    also: ['windings'],
  }),
  term('turn', 'turn', 'The wire once round the former.', ['row', 'winding', 'loose-end'], {
    also: ['turns'],
  }),
  term('row', 'row', 'Turns of one layer side by side, as many as fit the width.', ['turn', 'layer'], {
    also: ['rows'],
  }),
  term(
    'tape',
    'tape',
    'Insulating film with adhesive, wound round the coil over the whole width of the window.',
    ['ply', 'film', 'inset'],
    { also: ['tapes'] },
  ),
  term('ply', 'ply', 'One turn of tape in thickness.', ['tape', 'thin-sheet', 'layer'], {
    also: ['plies'],
    counts: 'Two plies share an open joint, unless it is closed and shown to be.',
  }),
  term(
    'film',
    'base film',
    'The plastic of a tape without its adhesive; it alone has electric strength.',
    ['tape', 'ply'],
    { also: ['film'] },
  ),
  term(
    'thin-sheet',
    'thin sheets',
    'Insulation in layers thinner than the least thickness, which counts by number and test instead.',
    ['ply', 'least-thickness'],
    { also: ['thin sheet material'] },
  ),
  term(
    'least-thickness',
    'least thickness',
    'The thickness from which one solid layer alone may be supplementary or reinforced insulation.',
    ['through-insulation', 'sleeve', 'thin-sheet'],
  ),
  term(
    'margin',
    'margin',
    'The space left free beside a winding at a flange.',
    ['block', 'flange', 'creepage-distance'],
    {
      also: ['margins'],
      counts: 'It counts on the way out and again on the way back, but only where something holds the turns.',
    },
  ),
  term(
    'block',
    'margin block',
    'A margin filled with wound tape or a moulded ring, so that the end turns stay where they are.',
    ['margin', 'loose-end', 'margin-tape'],
    { also: ['block', 'blocks', 'margin blocks', 'filled margin'] },
  ),
  term('margin-tape', 'margin tape', 'Narrow, soft tape that is wound beside a winding to fill its margin.', [
    'block',
    'margin',
  ]),
  term(
    'inset',
    'inset',
    'How far the edge of a tape or screen stays away from the flange.',
    ['tape', 'screen', 'margin'],
    { also: ['insets'] },
  ),
  term(
    'turned-up-edge',
    'turned-up edge',
    'The edge of a tape that is wider than the window and climbs the flange.',
    ['tape', 'flange', 'inset'],
    { also: ['turned up', 'turn-up'] },
  ),
  term(
    'screen',
    'screen',
    'A foil between two windings, bonded to a circuit or to earth.',
    ['earth', 'floating', 'inset'],
    { also: ['shield', 'screens'] },
  ),
  term(
    'loose-end',
    'loose end',
    'The end of a winding that nothing holds; it is counted where it can slide to.',
    ['block', 'slumped', 'margin'],
    { also: ['loose turns', 'loose ends'] },
  ),
  term(
    'slumped',
    'slumped',
    'How the coil lies after handling: loose ends spread, loose tape pushed aside, voids sagged.',
    ['loose-end', 'section'],
  ),
  term('varnish', 'varnish', 'Lacquer that the coil is dipped in; it closes no joint.', ['potting', 'joint']),
  term(
    'impregnation',
    'impregnation',
    'Filling a finished coil with varnish or resin; only what is shown to leave no void counts.',
    ['varnish', 'potting', 'cemented'],
    { also: ['impregnating'] },
  ),
  term(
    'potting',
    'potting',
    'Filling the coil with resin that sets; it counts where it was tested after heat and cold.',
    ['cemented', 'varnish'],
    { also: ['potted'] },
  ),
  term(
    'radial-stretch',
    'radial stretch',
    'How many times higher than wide a section is drawn, so that thin plies can be seen.',
    ['section', 'ply'],
  ),
];
