// Sheets and blocks of a build: thickness, strength and tracking group from the file or the tables.

import { plainly, type CountedAs } from '#judge/verdict/assumed.ts';
import { because, type Because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import type { MaterialGroup } from '#units/terms.ts';
import { filmBreakdown, tapeById, type Figure, type Tape } from '#standards/materials/materials.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { Margin } from '#model/design/layer.ts';
import type { Sheet, Withstand } from '#model/design/sheet.ts';
import type { Unknown } from '#model/quantity/reading.ts';
import { UNKNOWN_PLY } from '#model/unknown-counts.ts';
import type { BuildMargin, BuildSheet } from '#solver/section/build.ts';
import { inMm, nm, voltsPeak, type Nm, type VoltsPeak } from '#units/quantity.ts';
import type { Counted, Filling } from '#judge/assume/fill-context.ts';
import type { Strength, Solid } from '#books/questions/solid.ts';

/** Plies that an unknown count has at its best: as many as any rule asks for. */
const PLIES_AT_BEST = 3;

/** Strength is compared as peak: rms times the square root of two, direct voltage as it is. */
export const peakOf = (withstand: Withstand): VoltsPeak =>
  withstand.kind === 'dc' ? voltsPeak(withstand.value) : voltsPeak(withstand.value * Math.SQRT2);

export const isWithstand = (value: Withstand | Unknown): value is Withstand => value.kind !== 'unknown';

export interface FillSheetOptions {
  readonly bonded?: number | null;
}

export function fillSheet(
  filling: Filling,
  book: Book,
  sheet: Sheet,
  field: string,
  options: FillSheetOptions = {},
): BuildSheet {
  const tape = sheet.material === null ? null : tapeById(sheet.material);
  const plyThickness = plyOf(filling, sheet, tape, field);
  const plies =
    typeof sheet.plies === 'number'
      ? sheet.plies
      : filling.unknown(`${field}.plies`, plainly('one-ply')) === 'best'
        ? PLIES_AT_BEST
        : 1;
  const { strength, why } = sheetStrength(filling, book, sheet, field);
  const stuff = filling.stuffs.id({
    kind: 'sheet',
    ...sheetMatter(filling, book, sheet, plyThickness, strength, field),
    alike: `${sheet.material ?? field} ${plyThickness}`,
    group: groupOf(tape?.group ?? null),
    strength,
    stated: isWithstand(sheet.plyWithstand),
    thickness: plyThickness,
    bonded: options.bonded ?? null,
    layers: null,
    because: why,
  });
  return { plies, plyThickness, stuff };
}

/** How much of a ply is solid through and through, and what that shows: of film so much a millimetre, of woven nothing. */
function sheetMatter(
  filling: Filling,
  book: Book,
  { material, film, plyWithstand }: Sheet,
  plyThickness: Nm,
  strength: Strength,
  field: string,
): Pick<Solid, 'perMm' | 'material' | 'solid'> {
  const tape = material === null ? null : tapeById(material);
  const least = book.leastThickness().value;
  const perMm = strength === 'whatever' ? Infinity : book.shownPerMm(material).value;
  if (film !== null) return { perMm, material, solid: film.value };
  if (tape?.matter === 'film') return { perMm, material, solid: tape.film?.value ?? nm(0) };
  // woven and wound matter counts as it is, but only by a withstand that is stated
  if (tape !== null) return { perMm: strength === 'whatever' ? perMm : 0, material, solid: plyThickness };
  const isOpen = plyThickness >= least && (isWithstand(plyWithstand) || strength === 'whatever');
  const isFilm = isOpen && filling.unknown(`${field}.film`, plainly('film-under-least')) === 'best';
  return { perMm: strength === 'whatever' ? perMm : 0, material, solid: isFilm ? plyThickness : nm(0) };
}

function plyOf(filling: Filling, { plyThickness }: Sheet, tape: Tape | null, field: string): Nm {
  if (plyThickness?.kind === 'known') return plyThickness.value;
  if (tape !== null) return tape.total.value;
  filling.unknown(`${field}.plyThickness`, { as: 'ply', mm: inMm(UNKNOWN_PLY) });
  return UNKNOWN_PLY;
}

function sheetStrength(
  filling: Filling,
  book: Book,
  sheet: Sheet,
  field: string,
): { readonly strength: Strength; readonly why: Because } {
  const { plyWithstand: stated, material } = sheet;
  if (isWithstand(stated)) {
    const peak = peakOf(stated);
    const { value, kind: shape } = stated;
    const values = { field: `${field}.plyWithstand`, value, shape, peak };
    return { strength: peak, why: because('stated-withstand', values) };
  }
  const tape = material === null ? null : tapeById(material);
  const share = book.filmShare;
  const film = sheet.film && material !== null ? filmBreakdown(material, sheet.film.value) : null;
  const least = film ? (isOutOfRange(film) ? null : film.value) : (tape?.leastBreakdown?.value ?? null);
  const peak = least === null ? null : voltsPeak(least * share.value * Math.SQRT2);
  const as: CountedAs =
    peak === null || least === null
      ? plainly('no-strength')
      : { as: 'share-of-table', share: share.value, rms: least };
  // a file that is silent leaves our reading of the table; one that says unknown says that nobody knows
  const kind = stated.leftOut ? 'house-rule' : 'unknown';
  if (filling.unknown(`${field}.plyWithstand`, as, kind) === 'best') {
    return { strength: 'whatever', why: because('taken-to-stand', { field: `${field}.plyWithstand` }) };
  }
  const cites = tape?.leastBreakdown ? [tape.leastBreakdown.cite] : [];
  const from = film && !isOutOfRange(film) ? [film.because, share.because] : [share.because];
  if (peak === null || least === null) {
    return { strength: null, why: because('no-strength', { material }, cites, from) };
  }
  const values = { material, breakdown: least, share: share.value, peak };
  return { strength: peak, why: because('film-share', values, cites, from) };
}

/** An unlisted group counts as the worst. */
export const groupOf = (group: Figure<MaterialGroup> | null): MaterialGroup => group?.value ?? 'IIIb';

/** A moulded ring is a solid; a margin wound of tape is as many plies of tape as it has turns, each of its withstand. */
export function fillBlock(
  filling: Filling,
  book: Book,
  margin: Margin,
  field: string,
): Pick<BuildMargin, 'stuff' | 'turn'> {
  const tape = tapeById(margin.material ?? MARGIN_TAPE) ?? tapeById(MARGIN_TAPE)!;
  const turn = tape.total.value;
  const leftOut = !isWithstand(margin.withstand) && margin.withstand.leftOut;
  const kind = leftOut && !margin.moulded ? 'seldom-stated' : 'unknown';
  const strength = thinStrength(filling, margin.withstand, `${field}.withstand`, margin.filled, kind);
  const stuff = filling.stuffs.id({
    kind: margin.moulded ? 'block' : 'sheet',
    alike: margin.moulded ? 'block' : `wound ${tape.id} ${turn}`,
    group: groupOf(margin.material === null ? null : tape.group),
    strength,
    stated: isWithstand(margin.withstand),
    ...matterOf(book, margin.material, strength, margin.moulded && tapeById(margin.material ?? '') === null),
    thickness: margin.moulded ? nm(0) : turn,
    bonded: null,
    layers: null,
    because: because('margin-block', { field }),
  });
  return { stuff, turn };
}

/** What margins are wound of where the file does not say. */
const MARGIN_TAPE = 'margin-tape';

/** What a millimetre of a solid shows; woven, wound and nameless matter nothing. */
export const matterOf = (
  book: Book,
  material: string | null,
  strength: Strength,
  isSolid: boolean,
): Pick<Solid, 'perMm' | 'material' | 'solid'> => ({
  perMm: strength === 'whatever' ? Infinity : isSolid ? book.shownPerMm(material).value : 0,
  material,
  solid: nm(0),
});

/** Blocks and sleeves: nothing is shown unless a withstand is stated; a thick solid one shows its matter as well. */
export function thinStrength(
  filling: Filling,
  withstand: Withstand | Unknown,
  field: string,
  asked: boolean,
  kind: Counted['kind'] = 'unknown',
): Strength {
  if (isWithstand(withstand)) return peakOf(withstand);
  if (!asked) return null;
  return filling.unknown(field, plainly('no-strength'), kind) === 'best' ? 'whatever' : null;
}
