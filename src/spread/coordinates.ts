// The figures of a build that come out otherwise from one wound piece to the next: the file's own tolerances, and what the
// placement model adds. Of some it is a law that more is never worse (wider filled margins, wider tape, longer sleeves);
// of those a judged piece tells of others.

import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Random } from '#units/random.ts';
import { intervalAt, sleevesThrough } from './sleeve-reach.ts';
import type { Placement } from './placement.ts';

export interface Coordinate {
  readonly field: string;
  /** Ends of the range, mm (or the field's own number); the worse one first where `isLaw`. */
  readonly worse: number;
  readonly better: number;
  /** Whether better is never worse: laws of the judgement hold for it. */
  readonly isLaw: boolean;
  /** A margin that a sleeve runs through: better wider only where that reaches as far (see `sleeve-reach.ts`). */
  readonly isTense: boolean;
  /** A number of plies, not a length: at its worse end once in `once` pieces. */
  readonly isCount: boolean;
  readonly once: number;
  readonly draw: (random: Random) => number;
  readonly apply: (doc: DesignFile, value: number) => DesignFile;
}

export function coordinatesOf(doc: DesignFile, placement: Placement): readonly Coordinate[] {
  return [
    ...doc.layers.flatMap((_, i) => ofLayer(doc, i, placement)),
    ...doc.windings.flatMap((_, w) => ofLeads(doc, w, placement)),
    ...ofRest(doc),
  ];
}

/** The piece with these values: the file's own tolerances are in them, and not counted twice. */
export const pieceOf = (
  doc: DesignFile,
  coordinates: readonly Coordinate[],
  values: readonly number[],
): DesignFile => coordinates.reduce((file, { apply }, i) => apply(file, values[i]!), doc);

export const mmText = (value: number): string => `${Number(value.toFixed(6))} mm`;

const LENGTH = { isCount: false, isTense: false, once: 1 } as const;

const evenly =
  (from: number, to: number) =>
  (random: Random): number =>
    from + (to - from) * random.part();

const setLength =
  (field: string) =>
  (doc: DesignFile, value: number): DesignFile =>
    editDesign(doc, field, mmText(Math.max(0, value)));

function ofLayer(doc: DesignFile, index: number, placement: Placement): readonly Coordinate[] {
  const layer = doc.layers[index]!;
  const at = `layers[${index}]`;
  const margins = (['left', 'right'] as const).flatMap((side): readonly Coordinate[] => {
    const field = `${at}.margins.${side}.width`;
    const width = intervalAt(doc, field);
    if (width === null || width.value === 0) return [];
    const half = width.half + placement.margin;
    if (half === 0) return [];
    const [worse, better] = [Math.max(0, width.value - half), width.value + half];
    const sleeves = sleevesThrough(doc, index, side);
    const isLaw = sleeves !== null && fieldAt(doc, `${at}.margins.${side}.filled`) === true;
    const isTense = (sleeves ?? []).some((into) => shortest(doc, into, placement) < better);
    return [
      {
        field,
        worse,
        better,
        isLaw,
        ...LENGTH,
        isTense,
        draw: evenly(worse, better),
        apply: setLength(field),
      },
    ];
  });
  if (layer.kind !== 'tape') return margins;
  return [...margins, ...narrowTape(doc, at, placement), ...forgottenPly(layer.plies, at, placement)];
}

/** A link's sleeve is cut as it is drawn. */
function shortest(doc: DesignFile, into: string, { sleeve }: Placement): number {
  const { value, half } = intervalAt(doc, into) ?? { value: 0, half: 0 };
  return value - half - (into.includes('.leads.') ? sleeve : 0);
}

/** Too narrow by so much, on either side by any part of it. */
function narrowTape(doc: DesignFile, at: string, { tape }: Placement): readonly Coordinate[] {
  return (['left', 'right'] as const).flatMap((side): readonly Coordinate[] => {
    const field = `${at}.inset.${side}`;
    const inset = intervalAt(doc, field) ?? { value: 0, half: 0 };
    const [worse, better] = [inset.value + inset.half + tape / 2, Math.max(0, inset.value - inset.half)];
    return worse === better
      ? []
      : [
          {
            field,
            worse,
            better,
            isLaw: true,
            ...LENGTH,
            draw: evenly(better, worse),
            apply: setLength(field),
          },
        ];
  });
}

function forgottenPly(plies: unknown, at: string, { forgottenPly: once }: Placement): readonly Coordinate[] {
  if (once === 0 || typeof plies !== 'number' || plies < 2) return [];
  const field = `${at}.plies`;
  const draw = (random: Random): number => (random.part() < 1 / once ? plies - 1 : plies);
  const apply = (file: DesignFile, value: number) => editDesign(file, field, value);
  return [
    {
      field,
      worse: plies - 1,
      better: plies,
      isLaw: false,
      isTense: false,
      isCount: true,
      once,
      draw,
      apply,
    },
  ];
}

function ofLeads(doc: DesignFile, winding: number, { sleeve }: Placement): readonly Coordinate[] {
  return (['start', 'finish'] as const).flatMap((end): readonly Coordinate[] => {
    const field = `windings[${winding}].leads.${end}.sleeve.into`;
    const into = intervalAt(doc, field);
    if (into === null || sleeve + into.half === 0) return [];
    const [worse, better] = [Math.max(0, into.value - into.half - sleeve), into.value + into.half];
    return [
      { field, worse, better, isLaw: true, ...LENGTH, draw: evenly(worse, better), apply: setLength(field) },
    ];
  });
}

/** Tolerances of other lengths that the file states; nothing is a law of them, they change rows and heights. */
function ofRest(doc: DesignFile): readonly Coordinate[] {
  const windings = doc.windings.flatMap((_, w) =>
    ['conductor', 'overallDiameter'].map((part) => `windings[${w}].wire.${part}`),
  );
  const layers = doc.layers.flatMap((_, i) =>
    ['plyThickness', 'thickness'].map((part) => `layers[${i}].${part}`),
  );
  const fields = [...windings, ...layers, 'former.wall', 'former.flange', 'former.height', 'core.outerGap'];
  return fields.flatMap((field): readonly Coordinate[] => {
    const found = intervalAt(doc, field);
    if (found === null || found.half === 0) return [];
    const [worse, better] = [found.value - found.half, found.value + found.half];
    return [
      { field, worse, better, isLaw: false, ...LENGTH, draw: evenly(worse, better), apply: setLength(field) },
    ];
  });
}
