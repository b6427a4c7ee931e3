// Margins made wider or filled on the windings that a spot speaks of, and tapes and screens laid out to the flange.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act, SetAct } from './act.ts';
import { lengthAt, upToStep, widthText } from './file-lengths.ts';

const SIDES = ['left', 'right'] as const;

export function marginActs(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  const windings = spot.layers.filter((index) => doc.layers[index]?.kind === 'winding');
  const missing = spot.length !== null && spot.required !== null ? spot.required - spot.length : null;
  const wider = missing === null || missing <= 0 ? [] : widerMargins(doc, windings, missing);
  return [...windings.flatMap((index) => fillActs(doc, index)), ...wider, ...wideTapes(doc, spot)];
}

function fillActs(doc: DesignFile, index: number): readonly Act[] {
  const open = SIDES.filter((side) => {
    const margin = `layers[${index}].margins.${side}`;
    return (lengthAt(doc, `${margin}.width`, 0) ?? 0) > 0 && fieldAt(doc, `${margin}.filled`) !== true;
  });
  if (open.length === 0) return [];
  const set = open.map((side) => ({ field: `layers[${index}].margins.${side}.filled`, to: true }));
  return [{ kind: 'fill', on: `layers[${index}].filled`, set, amount: null }];
}

/** The whole of what is missing on one winding, or half on each of two. */
function widerMargins(doc: DesignFile, windings: readonly number[], missing: number): readonly Act[] {
  const alone = windings.map((index) => widerBy(doc, [index], missing));
  const both = windings.length === 2 ? [widerBy(doc, windings, missing / 2)] : [];
  return [...alone, ...both].flatMap((act) => (act === null ? [] : [act]));
}

/** Both sides alike, each at least as wide as it was; null where a width is not known. */
function widerBy(doc: DesignFile, windings: readonly number[], by: number): SetAct | null {
  const set = windings.flatMap((index) =>
    SIDES.flatMap((side) => {
      const field = `layers[${index}].margins.${side}.width`;
      const now = lengthAt(doc, field, 0);
      return now === null ? [] : [{ index, side, field, now }];
    }),
  );
  if (set.length < windings.length * 2) return null;
  const least = (index: number) =>
    Math.min(...set.filter((each) => each.index === index).map(({ now }) => now));
  return {
    kind: 'margin',
    on: windings.map((index) => `layers[${index}].margins`).join('+'),
    set: set.flatMap(({ index, side, field, now }) => {
      const to = Math.max(now, upToStep(least(index) + by));
      const filled = { field: `layers[${index}].margins.${side}.filled`, to: true };
      return to === now ? [] : [{ field, to: widthText(doc, field, to) }, filled];
    }),
    amount: by,
  };
}

function wideTapes(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  return spot.layers.flatMap((index): readonly Act[] => {
    if (doc.layers[index]?.kind !== 'tape') return [];
    const set = SIDES.map((side) => ({ field: `layers[${index}].inset.${side}`, to: '0 mm' })).filter(
      ({ field }) => (lengthAt(doc, field, 0) ?? 1) > 0,
    );
    return set.length === 0 ? [] : [{ kind: 'tape-wide', on: `layers[${index}].inset`, set, amount: null }];
  });
}
