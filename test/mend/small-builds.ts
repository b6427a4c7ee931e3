// Small invented builds drawn by lot for the search of mends, and every change that a winder would try on one, each by
// itself. None of it comes from the search. Four kinds: short margins, little or no tape, leads that are in the way, and a
// bias winding outermost. Where the diameter of the conductor is not known no other wire can be put in its place.

import { readFileSync } from 'node:fs';

import { editDesign } from '#model/edit/edit-design.ts';
import { insertAt } from '#model/edit/edit-list.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { randomOfDraw, type Random } from '#units/random.ts';

export type Alteration = (doc: DesignFile) => DesignFile;
type Edit = readonly [field: string, value: unknown];

const lesson = JSON.parse(
  readFileSync(new URL('../lesson-margin.json', import.meta.url), 'utf8'),
) as DesignFile;
const SIDES = ['left', 'right'] as const;
const ENDS = ['start', 'finish'] as const;
const SLEEVE = { material: 'ptfe', wall: '0.5 mm', into: '5 mm' };
const TAPE = { kind: 'tape', material: 'polyester-tape-25', plies: 3, plyThickness: '0.06 mm' };

const edited = (doc: DesignFile, edits: readonly Edit[]): DesignFile =>
  edits.reduce((file, [field, value]) => editDesign(file, field, value), doc);

const margins = (layer: number, width: string, filled: boolean): readonly Edit[] =>
  SIDES.flatMap((side): readonly Edit[] => [
    [`layers[${layer}].margins.${side}.width`, width],
    [`layers[${layer}].margins.${side}.filled`, filled],
  ]);

/** One row of each winding, one tape between them and one over all. */
const BASE = edited(lesson, [
  ['layers[0].turns', 20],
  ['layers[2].turns', 6],
]);

/** With a winding of the mains side over the output, behind a tape of its own. */
const BIASED: DesignFile = {
  ...BASE,
  windings: [...BASE.windings, { ...BASE.windings[0]!, id: 'B' }],
  layers: [...BASE.layers, { ...BASE.layers[0]!, winding: 'B', turns: 8 } as DesignFile['layers'][number]],
};

/** Of three builds in four no conductor is known. */
const wires = (random: Random): readonly Edit[] =>
  random.oneOf([true, true, true, false])
    ? [0, 1].map((w): Edit => [`windings[${w}].wire.conductor`, 'unknown'])
    : [];

const KINDS: readonly ((random: Random) => DesignFile)[] = [
  (random) => {
    const filled = random.oneOf([true, true, false]);
    return edited(BASE, [
      ...margins(0, `${random.oneOf([1, 2, 2.5])} mm`, filled),
      ...margins(2, `${random.oneOf([1, 2, 2.5])} mm`, filled),
      ['layers[1].plies', random.whole(1, 3)],
      ['layers[1].inset', { left: random.oneOf(['0 mm', '0.5 mm']), right: '0 mm' }],
      ['former.height', random.oneOf(['4.2 mm', '4.2 mm', '1.1 mm'])],
      ...wires(random),
    ]);
  },
  (random) => {
    const bare = edited(BASE, [
      ...margins(0, `${random.oneOf([0, 1, 3])} mm`, true),
      ...margins(2, `${random.oneOf([0, 1, 3])} mm`, true),
      ['layers[1].plies', random.whole(1, 2)],
      ...wires(random),
    ]);
    return random.oneOf([true, false])
      ? { ...bare, layers: bare.layers.filter((_, layer) => layer !== 1) }
      : bare;
  },
  (random) => {
    const lead = (): unknown => ({
      at: random.oneOf(SIDES),
      exit: random.oneOf(SIDES),
      way: random.oneOf(['riser', 'slot']),
      sleeve: random.oneOf([null, SLEEVE, { ...SLEEVE, into: '1 mm' }]),
    });
    const own = random.whole(0, 1);
    return edited(BASE, [
      [`windings[${own}].leads`, { start: lead(), finish: lead() }],
      ['layers[1].plies', random.oneOf([1, 3])],
      ...wires(random),
    ]);
  },
  (random) => {
    const own = (layer: number) =>
      margins(layer, `${random.oneOf([2, 3])} mm`, random.oneOf([true, true, false]));
    return edited(BIASED, [
      ...[0, 2, 4].flatMap(own),
      ['layers[1].plies', random.whole(2, 3)],
      ['layers[3].plies', random.whole(2, 3)],
      ...wires(random),
    ]);
  },
];

export const smallBuild = (number: number): DesignFile =>
  KINDS[number % KINDS.length]!(randomOfDraw(7, number));

/** Each change that a winder would try on this build, by itself. */
export const alterationsOf = (doc: DesignFile): readonly Alteration[] => [
  ...editsOf(doc).map(
    (edits): Alteration =>
      (file) =>
        edited(file, edits),
  ),
  // put in last, since it shifts the layers after it: see `together`
  ...(doc.layers[1]?.kind === 'tape' ? [] : [tapeIn]),
];

const tapeIn: Alteration = (doc) => insertAt(doc, 'layers', 1, TAPE);

/** Two at once. */
export const together = (doc: DesignFile, first: Alteration, second: Alteration): DesignFile =>
  second(first(doc));

function editsOf(doc: DesignFile): readonly (readonly Edit[])[] {
  const ofLayers = doc.layers.flatMap((layer, i): readonly (readonly Edit[])[] =>
    layer.kind === 'winding'
      ? [
          margins(i, '3 mm', true),
          margins(i, '4 mm', true),
          SIDES.map((side): Edit => [`layers[${i}].margins.${side}.filled`, true]),
        ]
      : [[[`layers[${i}].plies`, 3]], [[`layers[${i}].inset`, { left: '0 mm', right: '0 mm' }]]],
  );
  const ofWindings = doc.windings.flatMap(({ wire, leads }, w): readonly (readonly Edit[])[] => [
    wire.kind === 'enamelled' && wire.conductor !== 'unknown'
      ? [[`windings[${w}].wire`, layered(wire.conductor)]]
      : [],
    ...(typeof leads === 'object'
      ? ENDS.flatMap((end): readonly (readonly Edit[])[] => [
          [[`windings[${w}].leads.${end}.sleeve`, SLEEVE]],
          [[`windings[${w}].leads.${end}.way`, 'slot']],
        ])
      : []),
  ]);
  const ofBuild: readonly (readonly Edit[])[] = [
    [['core.wrap', { material: 'polyester-tape-25', plies: 3 }]],
    [['former.height', '6 mm']],
  ];
  return [...ofLayers, ...ofWindings, ...ofBuild].filter((edits) => edits.length > 0);
}

const layered = (conductor: unknown): unknown => ({
  kind: 'layer-insulated',
  conductor,
  insulationLayers: 3,
  overallDiameter: `${Number((parseFloat(String(conductor)) + 0.2).toFixed(2))} mm`,
  approval: 'wire-annex',
});
