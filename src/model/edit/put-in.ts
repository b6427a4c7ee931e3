// A layer as somebody describes it before it is put in: where it lies, what it is, where it ends. What was not said is unknown.
// A winding of a circuit is made with its first layer; a further layer of the same winding goes on with it.

import { unmeasured } from '#model/begin/unmeasured.ts';
import { insertAt } from './edit-list.ts';
import { addLayer, type LayerFile, type LayerKind } from './layer-edits.ts';
import { freeWindingId } from './circuit-edits.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export interface LayerWish {
  /** Index that it gets in the file's list. */
  readonly at: number;
  readonly chamber: number;
  readonly kind: LayerKind;
  /** Of a winding and a screen: `circuit:pri` begins a winding, `winding:P` goes on with one; empty: a floating screen. */
  readonly of: string;
  readonly turns: string;
  readonly wire: string;
  readonly conductor: string;
  readonly material: string;
  readonly plies: string;
  /** Of a ply, or of a screen's foil. */
  readonly thickness: string;
  /** How far it stays from either face, mm. */
  readonly left: string;
  readonly right: string;
  /** Blocks fill the margins. */
  readonly filled: boolean;
}

type Wire = DesignFile['windings'][number]['wire'];

export function putIn(doc: DesignFile, wish: LayerWish): DesignFile {
  const named = wish.kind === 'winding' ? withWinding(doc, wish) : { doc, winding: '' };
  const chamber = wish.chamber === 0 ? {} : { chamber: wish.chamber };
  return addLayer(named.doc, wish.at, { ...layerOf(wish, named.winding), ...chamber });
}

function withWinding(
  doc: DesignFile,
  { of, wire, conductor }: LayerWish,
): { doc: DesignFile; winding: string } {
  const [how = '', name = ''] = split(of);
  if (how === 'winding') return { doc, winding: name };
  const circuit = doc.circuits.findIndex(({ id }) => id === name);
  const winding = freeWindingId(
    doc.windings.map(({ id }) => id),
    circuit,
  );
  const told: Wire = { kind: wireKind(wire), conductor: said(conductor) };
  return {
    doc: insertAt(doc, 'windings', doc.windings.length, { id: winding, circuit: name, wire: told }),
    winding,
  };
}

function layerOf(wish: LayerWish, winding: string): LayerFile {
  switch (wish.kind) {
    case 'winding':
      return { kind: 'winding', winding, turns: counted(wish.turns) as number, ...marginsOf(wish) };
    case 'tape':
      return {
        kind: 'tape',
        ...(said(wish.material) === 'unknown' ? {} : { material: wish.material }),
        plies: counted(wish.plies) as number,
        plyThickness: said(wish.thickness),
        ...insetOf(wish),
      };
    case 'screen': {
      const [, circuit = ''] = split(wish.of);
      const tied = circuit === '' ? {} : { circuit };
      return {
        kind: 'screen',
        ...tied,
        thickness: isSaid(wish.thickness) ? wish.thickness.trim() : unmeasured.foil,
        ...insetOf(wish),
      };
    }
  }
}

const split = (of: string): readonly string[] => {
  const place = of.indexOf(':');
  return [of.slice(0, place), of.slice(place + 1)];
};

/** A text that is no number stays as it was typed: reading the file says what is wrong with it. */
const counted = (text: string): number | string => (/^\d+$/.test(text.trim()) ? Number(text) : said(text));

const isSaid = (text: string): boolean => text.trim() !== '' && text.trim() !== '?';

const said = (text: string): string => (isSaid(text) ? text.trim() : 'unknown');

const wireKind = (text: string): NonNullable<Wire['kind']> => text as NonNullable<Wire['kind']>;

function marginsOf({ left, right, filled }: LayerWish): object {
  const one = (text: string): object | undefined =>
    isNone(text) ? undefined : { width: said(text), ...(filled ? { filled } : {}) };
  return sides('margins', one(left), one(right));
}

const insetOf = ({ left, right }: LayerWish): object =>
  sides('inset', isNone(left) ? undefined : said(left), isNone(right) ? undefined : said(right));

function sides(name: string, left: unknown, right: unknown): object {
  if (left === undefined && right === undefined) return {};
  return {
    [name]: { ...(left === undefined ? {} : { left }), ...(right === undefined ? {} : { right }) },
  };
}

const isNone = (text: string): boolean => text.trim() === '' || /^0*\.?0*\s*(mm)?$/.test(text.trim());
