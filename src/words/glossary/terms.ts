// Every term of the trade that stands on a page or in a report, in one sentence each, with its nearest neighbours.
// Sentences are our own; where a term has another name in the trade it stands under `also`.

export interface Term {
  readonly id: string;
  readonly term: string;
  /** Other names for the same thing, and other forms under which it stands in sentences. */
  readonly also: readonly string[];
  readonly says: string;
  /** What counts as it and what does not, where that is often mixed up. */
  readonly counts?: string;
  /** Ids of terms that are easily taken for it, or that stand beside it. */
  readonly near: readonly string[];
}

const term = (
  id: string,
  name: string,
  says: string,
  near: readonly string[],
  more: { readonly also?: readonly string[]; readonly counts?: string } = {},
): Term => ({
  id,
  term: name,
  also: more.also ?? [],
  says,
  ...(more.counts === undefined ? {} : { counts: more.counts }),
  near,
});

export const terms: readonly Term[] = [
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
    'functional-insulation',
    'functional insulation',
    'Insulation that a device needs to work, and that protects nobody.',
    ['basic-insulation', 'enamel'],
    { also: ['functional'] },
  ),
  term(
    'basic-insulation',
    'basic insulation',
    'One barrier against electric shock, which a single fault may break.',
    ['supplementary-insulation', 'double-insulation', 'functional-insulation'],
    { also: ['basic'] },
  ),
  term(
    'supplementary-insulation',
    'supplementary insulation',
    'A second, independent barrier that protects when basic insulation fails.',
    ['basic-insulation', 'double-insulation'],
    { also: ['supplementary'] },
  ),
  term(
    'double-insulation',
    'double insulation',
    'Basic and supplementary insulation one behind the other.',
    ['reinforced-insulation', 'basic-insulation', 'supplementary-insulation'],
    { also: ['double'] },
  ),
  term(
    'reinforced-insulation',
    'reinforced insulation',
    'One insulation that is worth as much as double insulation.',
    ['double-insulation', 'three-layer-wire'],
    { also: ['reinforced'] },
  ),
  term(
    'grade',
    'grade',
    'How much an insulation is worth: none, functional, basic, supplementary, double or reinforced.',
    ['basic-insulation', 'reinforced-insulation', 'weakest-path'],
    { also: ['grades', 'ladder of grades'] },
  ),
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
    { also: ['block', 'filled margin'] },
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
  term(
    'floating',
    'floating part',
    'A conductor that is bonded to nothing, such as a core; it takes on any voltage.',
    ['core', 'screen', 'core-bridge'],
    { also: ['floating'] },
  ),
  term(
    'core-bridge',
    'way over the core',
    'A path from one circuit to the core and from there to another; the two parts add up.',
    ['floating', 'core'],
    { also: ['over the core'] },
  ),
  term('earth', 'earth', 'The protective conductor of the installation, and what is bonded to it.', [
    'screen',
    'role',
  ]),
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
    'potting',
    'potting',
    'Filling the coil with resin that sets; it counts where it was tested after heat and cold.',
    ['cemented', 'varnish'],
    { also: ['potted'] },
  ),
  term('varnish', 'varnish', 'Lacquer that the coil is dipped in; it closes no joint.', ['potting', 'joint']),
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
  term(
    'section',
    'section',
    'The cut through the window that is drawn and judged: plain, with a lead laid in, or slumped.',
    ['window', 'slumped', 'lead-out'],
    { also: ['sections'] },
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
  term(
    'altitude',
    'altitude',
    'Height of the place of use; thin air holds less, so clearances grow above 2000 m.',
    ['clearance'],
  ),
  term(
    'bridging-width',
    'bridging width X',
    'The width under which a gap in a surface counts as crossed, because dirt fills it.',
    ['creepage-distance', 'pollution-degree'],
    { also: ['X'] },
  ),
  term(
    'electric-strength-test',
    'electric strength test',
    'A high voltage for a minute between two circuits; it finds holes and wrong parts, not short creepage.',
    ['high-frequency-level', 'transient'],
    { also: ['flash test', 'withstand test', 'test voltage'] },
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
    'flyback',
    'flyback transformer',
    'A transformer that stores energy in its gap while the switch is on and gives it out when it is off.',
    ['reflected-voltage', 'primary'],
    { also: ['flyback'] },
  ),
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
    'rule-book',
    'rule book',
    'The standard, in one edition, that a build is held against.',
    ['grade', 'clause'],
    { also: ['standard', 'edition'] },
  ),
  term('clause', 'clause', 'The numbered place in a rule book where a rule stands.', ['rule-book']),
  term(
    'unknown',
    'unknown',
    'Not measured and not stated; counted at its worst and named.',
    ['at-worst', 'decides', 'not-shown'],
    { also: ['don’t know'] },
  ),
  term(
    'at-worst',
    'at worst, at best',
    'Judged with every unknown counted against the build, or for it.',
    ['unknown', 'proven'],
    { also: ['at worst', 'at best'] },
  ),
  term(
    'proven',
    'proven',
    'A pair that falls short whatever the unknowns are: what was measured is enough to say so.',
    ['at-worst', 'falls-short'],
  ),
  term('decides', 'decides', 'Said of an unknown that would change the verdict if it were known.', [
    'unknown',
    'not-shown',
  ]),
  term('meets', 'meets', 'What is asked is reached, with all that is unknown counted at its worst.', [
    'falls-short',
    'not-shown',
  ]),
  term(
    'falls-short',
    'falls short',
    'What is asked is not reached, even with all that is unknown counted at its best.',
    ['meets', 'not-shown', 'proven'],
  ),
  term('not-shown', 'not shown', 'Whether what is asked is reached depends on what nobody knows.', [
    'meets',
    'falls-short',
    'unknown',
  ]),
  term(
    'memory',
    'from memory',
    'A figure that its author recalled and did not see in a document; check it before you rely on it.',
    ['rule-book', 'clause'],
    { also: ['memory', 'second-hand copy'] },
  ),
];

export const termOf = (id: string): Term | null => terms.find((each) => each.id === id) ?? null;
