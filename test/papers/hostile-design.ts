// A design with something hostile in every field that takes free text.

export const HOSTILE =
  '<img src=x onerror=alert(1)>"\'</script></style><script>alert(2)</script>javascript:alert(3)\u202e&amp;';

/** Bound to be read without a fault; names of materials and ids keep to what the schema lets through. */
export const hostileDesign = {
  format: 'layerwright-design/1',
  title: HOSTILE,
  origin: 'dissected',
  made: '2019',
  notes: HOSTILE,
  rules: 'iec-62368-1',
  supply: { kind: 'ac', voltage: '240 V' },
  circuits: [
    { id: 'pri', name: HOSTILE, role: 'mains' },
    { id: 'out', name: `${HOSTILE} out`, role: 'touchable' },
  ],
  former: { height: '4 mm', wall: '0.8 mm', flange: '0.8 mm', chambers: [{ width: '10 mm' }] },
  core: { bond: 'floating', outerGap: '0.4 mm' },
  windings: [
    {
      id: 'P',
      circuit: 'pri',
      wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1 },
      leads: 'not-judged',
    },
    {
      id: 'S',
      circuit: 'out',
      wire: { kind: 'enamelled', conductor: '0.4 mm', grade: 1 },
      leads: 'not-judged',
    },
  ],
  layers: [
    { kind: 'winding', winding: 'P', turns: 20 },
    { kind: 'tape', material: 'polyester-tape-25', plies: 3 },
    { kind: 'winding', winding: 'S', turns: 9 },
  ],
  outside: [{ between: ['pri', 'out'], what: HOSTILE, clearance: '8 mm', creepage: '8 mm' }],
  bridges: [
    {
      id: 'CY1',
      kind: 'capacitor',
      between: ['pri', 'out'],
      capacitance: '1 nF',
      safetyClass: 'Y1',
      rated: '400 V',
    },
  ],
  evidence: [
    {
      id: 'E1',
      kind: 'photo',
      says: HOSTILE,
      fields: ['former.wall'],
      file: 'data:text/html;base64,PHNjcmlwdD4=',
    },
    { id: 'E2', kind: 'document', says: HOSTILE, fields: [], file: HOSTILE },
  ],
};
