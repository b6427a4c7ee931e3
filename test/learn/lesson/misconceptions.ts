// What people who examine, rewind or design small supplies commonly get wrong or ask, and the lesson that answers it; or why
// none can, and where the page answers instead. Condensed from public questions; the wording is ours.

export interface Misconception {
  readonly id: string;
  readonly asks: string;
  /** Id of a lesson; null: no lesson can answer it. */
  readonly lesson: string | null;
  /** What the lesson must speak of; without a lesson, why none can answer it. */
  readonly speaks: RegExp | string;
  /** Without a lesson: where the answer is. */
  readonly at?: { readonly word: string } | { readonly page: string };
}

export const misconceptions: readonly Misconception[] = [
  {
    id: 'thin-film',
    asks: 'How can so thin a film keep windings apart?',
    lesson: 'plies',
    speaks: /stand.* test/,
  },
  {
    id: 'enamel-counts',
    asks: 'Is enamel counted?',
    lesson: 'enamel',
    speaks: /functional insulation at most/,
  },
  {
    id: 'ply-count',
    asks: 'One, two or three plies: which rule?',
    lesson: 'plies',
    speaks: /Two plies.*three/,
  },
  {
    id: 'which-grade',
    asks: 'When is functional, basic, reinforced enough?',
    lesson: 'grades',
    speaks: /[Ff]unctional.*basic.*reinforced/,
  },
  {
    id: 'who-is-kept-apart',
    asks: 'Between which circuits?',
    lesson: 'who-may-meet',
    speaks: /mains against touchable/,
  },
  {
    id: 'served-litz',
    asks: 'Does a textile over litz count?',
    lesson: 'served',
    speaks: /textile over litz earns nothing/,
  },
  {
    id: 'rms-or-peak',
    asks: 'Is the voltage of the table rms or peak?',
    lesson: 'volts',
    speaks: /rms for creepage, peak for clearance/,
  },
  {
    id: 'which-ends',
    asks: 'Which voltage, between which ends?',
    lesson: 'volts',
    speaks: /between the two sides/,
  },
  {
    id: 'air-is-surface',
    asks: 'Is one distance not enough?',
    lesson: 'air-and-surface',
    speaks: /both must hold/,
  },
  {
    id: 'corners',
    asks: 'How is a way over a wall measured?',
    lesson: 'air-and-surface',
    speaks: /climbs the wall/,
  },
  {
    id: 'bought',
    asks: 'What is known of a bought one?',
    lesson: 'dissected',
    speaks: /[Uu]nknown is an answer/,
  },
  {
    id: 'tracking-unknown',
    asks: 'Group unknown: the worst?',
    lesson: null,
    speaks:
      'a lesson is judged, and all formers of the tables are of group III: no answer would change the verdict',
    at: { word: 'material-group' },
  },
  { id: 'dirt', asks: 'Does dust matter?', lesson: 'pollution', speaks: /worth less in dirt/ },
  {
    id: 'series-outputs',
    asks: 'Two low outputs in series: still one?',
    lesson: 'series',
    speaks: /voltage of the sum/,
  },
  {
    id: 'crossing-lead',
    asks: 'A wire crosses on its way out: sleeve or nothing?',
    lesson: 'sleeves',
    speaks: /sleeve counts by its wall/,
  },
  { id: 'lead-is-far', asks: 'Does a lead in the margin count?', lesson: 'leads', speaks: /count from it/ },
  { id: 'pass-proves', asks: 'What does a passed test show?', lesson: 'the-test', speaks: /proves little/ },
  {
    id: 'test-volts',
    asks: 'AC or DC, and do bridging parts come off?',
    lesson: null,
    speaks:
      'a lesson is judged by distances and solids; which test is run, and with what taken off, changes no grade',
    at: { page: 'stress' },
  },
  {
    id: 'in-bunches',
    asks: 'Why do failures come in bunches?',
    lesson: 'tolerance',
    speaks: /room for the hand/,
  },
  {
    id: 'lacquer-cures',
    asks: 'Does lacquer cure it?',
    lesson: 'loose-turns',
    speaks: /varnish holds nothing/,
  },
  {
    id: 'which-finds-a-void',
    asks: 'Which test finds a void?',
    lesson: null,
    speaks: 'a void is no part of the file, so that no build can hold one to find',
    at: { page: 'field' },
  },
  { id: 'from-the-cheeks', asks: 'How far from the cheeks?', lesson: 'margin', speaks: /both margins/ },
  { id: 'held-by-friction', asks: 'Must the end turns be held?', lesson: 'loose-turns', speaks: /holds it/ },
  {
    id: 'rewound-and-failed',
    asks: 'What must be put back, layer by layer?',
    lesson: 'rewound',
    speaks: /margins, plies and sleeves/,
  },
  {
    id: 'board-and-transformer',
    asks: 'The board is bad; how bad is the coil?',
    lesson: null,
    speaks: 'the file holds the transformer; the board beside it is not judged',
    at: { page: 'examine' },
  },
  {
    id: 'part-is-there',
    asks: 'The safety part is there: is that enough?',
    lesson: 'bridge',
    speaks: /joins the two sides is judged/,
  },
  { id: 'months', asks: 'Why does it fail after months?', lesson: 'heat', speaks: /ages/ },
  {
    id: 'core-is-no-wire',
    asks: 'No wire goes to the core: does it count?',
    lesson: 'core',
    speaks: /floating core bridges/,
  },
  {
    id: 'screen-covers',
    asks: 'Does any screen protect?',
    lesson: 'screen',
    speaks: /cover more than the windings/,
  },
  {
    id: 'own-insulation',
    asks: 'Does insulated wire need a margin?',
    lesson: 'wire',
    speaks: /along its whole length/,
  },
  { id: 'mend-all', asks: 'Must all of it be changed?', lesson: 'mend', speaks: /smallest change/ },
];
