// Sleeves of a build: all that one may be, of which the worse counts. A wall takes room whatever it stands; from the least
// thickness up it takes none of other layers'; and one of which no strength is shown is a way along the lead as far as it
// reaches. So a sleeve of which nobody knows anything is tried as none, as a thin one and as a thick one.

import { plainly } from '#judge/verdict/assumed.ts';
import { because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import { sleeveById } from '#standards/materials/materials.ts';
import type { Sleeve } from '#model/design/winding.ts';
import { isKnown, type Unknown } from '#model/quantity/reading.ts';
import type { BuildSleeve } from '#solver/section/build.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';
import type { Filling } from '#judge/assume/fill-context.ts';
import { groupOf, isWithstand, matterOf, thinStrength } from './fill-solid.ts';

/** So far inside that a sleeve's end lies flush with the winding's. */
const FLUSH = nm(1_000_000_000);

/** Null: nothing of it is shown. `strong`: at its best, so that the lead cannot matter. */
export type FilledSleeve = BuildSleeve | null | 'strong';

export function fillSleeve(
  filling: Filling,
  sleeve: Sleeve | Unknown,
  field: string,
  book: Book,
): readonly FilledSleeve[] {
  const thick = book.leastThickness().value;
  const [wall, into] = sizesOf(filling, sleeve, field);
  if (wall === 'best' && into === 'best') return ['strong'];
  // one of the two that is known holds at best as well: a thin wall stays thin, a short sleeve short
  const walls = wall === 'worst' ? [nm(0), nm(thick - 1), thick] : [wall === 'best' ? thick : wall];
  const shortest = into === 'worst' && wall !== 'worst' ? [nm(0)] : [];
  const reaches = [...shortest, typeof into === 'string' ? FLUSH : into];
  return walls.flatMap((each) =>
    each === 0 ? [null] : reaches.map((reach) => sleeveOf(filling, book, sleeve, field, each, reach)),
  );
}

/** Of one that may be there or not: thin and thick, as far inside as may be, with nothing shown. */
export const possibleSleeves = (filling: Filling, field: string, book: Book): readonly BuildSleeve[] => {
  const thick = book.leastThickness().value;
  return [nm(thick - 1), thick].map((wall) => sleeveOf(filling, book, UNKNOWN, field, wall, FLUSH));
};

const UNKNOWN: Unknown = { kind: 'unknown', leftOut: false };

type Size = Nm | 'worst' | 'best';

/** Wall, and how far it reaches inside. */
function sizesOf(filling: Filling, sleeve: Sleeve | Unknown, field: string): readonly [Size, Size] {
  if ('kind' in sleeve) {
    const counted = filling.unknown(field, plainly('no-sleeve'));
    return [counted, counted];
  }
  const size = (part: 'wall' | 'into'): Size => {
    const reading = sleeve[part];
    return isKnown(reading) ? reading.value : filling.unknown(`${field}.${part}`, plainly('no-length'));
  };
  return [size('wall'), size('into')];
}

function sleeveOf(
  filling: Filling,
  book: Book,
  sleeve: Sleeve | Unknown,
  field: string,
  wall: Nm,
  into: Nm,
): BuildSleeve {
  const { material: id, withstand } = 'kind' in sleeve ? { material: null, withstand: sleeve } : sleeve;
  const material = id === null ? null : sleeveById(id);
  // of one that is wholly unknown the strength is no question of its own
  const strength = thinStrength(filling, withstand, `${field}.withstand`, withstand !== sleeve);
  const stuff = filling.stuffs.id({
    kind: 'sleeve',
    alike: 'sleeve',
    group: groupOf(material?.group ?? null),
    strength,
    stated: isWithstand(withstand),
    // one that nobody named may be a braid
    ...matterOf(book, id, strength, material?.matter === 'tube'),
    thickness: wall,
    bonded: null,
    layers: null,
    because: because('sleeve', { field, wall: inMm(wall) }),
  });
  return { wall, into, stuff };
}
