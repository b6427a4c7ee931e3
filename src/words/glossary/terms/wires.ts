// Wires and their ways out.

import { term, type Term } from './term.ts';

export const wireTerms: readonly Term[] = [
  term(
    'wire',
    'wire',
    'A conductor with what is on it from the start: nothing, enamel, or insulation of its own.',
    ['conductor', 'enamel', 'insulated-wire'],
    { also: ['wires', 'winding wire'] },
  ),
  term(
    'conductor',
    'conductor',
    'Metal that carries voltage: the copper of a wire, a screen, the core.',
    ['wire', 'circuit', 'core'],
    { also: ['conductors', 'bare metal'] },
  ),
  term(
    'enamel',
    'enamel',
    'The lacquer of winding wire; it keeps turns apart and is no barrier between circuits.',
    ['functional-insulation', 'insulated-wire'],
    { also: ['enamelled'] },
  ),
  term(
    'insulated-wire',
    'insulated winding wire',
    'Winding wire with one, two or three extruded or wound layers of insulation of its own.',
    ['three-layer-wire', 'enamel', 'cover'],
    { also: ['insulated wire', 'layer-insulated wire'] },
  ),
  term(
    'three-layer-wire',
    'wire with three insulation layers',
    'Certified wire whose cover alone is reinforced insulation, up to where it is stripped.',
    ['insulated-wire', 'reinforced-insulation'],
    { also: ['three-layer wire', 'triple-insulated wire'] },
  ),
  term(
    'fully-insulated-wire',
    'fully insulated wire',
    'Enamelled wire with so much more enamel that it is tested without a pinhole.',
    ['enamel', 'insulated-wire'],
    { also: ['FIW'] },
  ),
  term(
    'served-wire',
    'served wire',
    'Wire or litz with a textile wound over it; the textile is no insulation.',
    ['litz', 'cover'],
    { also: ['served'] },
  ),
  term(
    'certified',
    'certified wire',
    'Winding wire that was tested as the rule book’s annex on wire asks.',
    ['three-layer-wire', 'insulated-wire'],
    { also: ['wire annex', 'certified'] },
  ),
  term('litz', 'litz wire', 'Many thin enamelled wires twisted into one.', ['enamel', 'strand'], {
    also: ['litz'],
  }),
  term('strand', 'strand', 'One of several wires wound side by side as one.', ['litz', 'turn'], {
    also: ['strands'],
  }),
  term('cover', 'cover', 'The insulation that a wire brings with it, other than enamel.', [
    'insulated-wire',
    'sleeve',
  ]),
  term(
    'lead-out',
    'lead-out',
    'The wire from a winding’s end to its pin.',
    ['riser', 'slot', 'sleeve', 'bare-lead'],
    { also: ['lead', 'leads', 'lead-outs'] },
  ),
  term(
    'riser',
    'riser',
    'A lead-out that climbs the inside of the flange, past all layers further out.',
    ['lead-out', 'slot'],
    { also: ['risers'] },
  ),
  term('slot', 'slot', 'A notch in the flange through which a lead leaves at its own height.', [
    'lead-out',
    'riser',
  ]),
  term('link', 'link', 'The wire that joins two parts of a split winding.', ['lead-out', 'riser'], {
    also: ['links'],
  }),
  term(
    'bare-lead',
    'bare lead',
    'The part of a lead-out that neither sleeve nor cover protects.',
    ['lead-out', 'sleeve'],
    { also: ['stripped end'] },
  ),
  term('sleeve', 'sleeve', 'A tube of insulation pushed over a lead.', ['lead-out', 'least-thickness'], {
    also: ['sleeves', 'sleeving'],
    counts: 'It counts by its wall and only as far as it reaches.',
  }),
];
