// The field in the report, on a page of its own that holds it all, A4 or Letter: picture, the first gap close beside the
// capacitances, all gaps, on what it stands. Of long lists the page has the first lines and says what is left out.

import { fieldSvg, gapSvg } from '#drawing/field/field-svg.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import type { Design } from '#model/design.ts';
import type { FieldPicture } from '#judge/field/field-picture.ts';
import type { FieldReport } from '#judge/field/field-report.ts';
import { capacitanceRows, switchingLines } from '#words/field/capacitance-words.ts';
import { fieldBasis, fieldHeadline, times, within } from '#words/field/field-headline.ts';
import { gapPlace, gapSentence, microns } from '#words/field/gap-words.ts';
import { volts } from '#words/text/number-words.ts';
import { block, raw, table, tag, type Column, type Content } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

/** Widths that print at a little more than their own size, so that their lettering does. */
const WIDE = 620;
const CLOSE = 248;
/** Height of the whole picture that the page has room for, and of the scale on it. */
const TALL = 216;
const SCALE_HIGH = 36;
/** Rows of one table that the page has room for. */
const ROOM = 9;

export function field({ design, judgement, field: picture, theme }: ReportParts): Content {
  if (picture === null) return null;
  const { report } = picture;
  const scene = sceneOf(design, judgement, report.section);
  if (scene === null) return null;
  const look = { theme: theme.name, heading: null, says: '', lines: true, picked: null } as const;
  const whole = fieldSvg(scene, picture, { ...look, width: wideOf(picture), prefix: 'field-' });
  const close = gapSvg(scene, picture, 0, { ...look, width: CLOSE, prefix: 'gap-' });
  const caption =
    'Field strength in steps, lines of equal potential; gaps are numbered by their margin, the first of those at one place.';
  const first = report.gaps[0];
  return tag(
    'div',
    { class: 'own-page' },
    block('The field of the section', tag('p', { class: 'headline' }, fieldHeadline(design, report))),
    whole === '' ? null : tag('figure', { class: 'wide-field' }, raw(whole), tag('figcaption', {}, caption)),
    tag(
      'div',
      { class: 'gap-row' },
      close === '' || first === undefined
        ? null
        : tag('figure', {}, raw(close), tag('figcaption', {}, gapSentence(design, first, false))),
      tag('div', {}, capacitances(design, report)),
    ),
    gaps(design, report),
    fieldBasis(design, report).map((line) => tag('p', { class: 'note' }, line)),
  );
}

/** A high window is drawn narrower. */
function wideOf({ whole }: FieldPicture): number {
  if (whole === null) return WIDE;
  const { x0, x1, y0, y1 } = whole.raster;
  return Math.min(WIDE, Math.round(((TALL - SCALE_HIGH) * (x1 - x0)) / (y1 - y0)));
}

function capacitances(design: Design, report: FieldReport): Content {
  const columns: readonly Column[] = [
    { title: 'Between' },
    { title: 'Mean turn', figures: true },
    { title: 'Within', figures: true },
    { title: 'Estimate', figures: true },
  ];
  const rows = capacitanceRows(design, report).map((one) => [
    one.between,
    one.whole,
    one.within,
    one.estimate,
  ]);
  return block(
    'Capacitances',
    ...cut(columns, rows),
    switchingLines(design, report).map((line) => tag('p', { class: 'note' }, `Switching drives ${line}.`)),
  );
}

function gaps(design: Design, { gaps: found }: FieldReport): Content {
  const columns: readonly Column[] = [
    { title: 'Gap' },
    { title: 'Length', figures: true },
    { title: 'Carries', figures: true },
    { title: 'Holds', figures: true },
    { title: 'Margin', figures: true },
    { title: 'Starts at', figures: true },
  ];
  const rows = found.map((gap, i) => [
    `${i + 1} ${gapPlace(design, gap)}`,
    microns(gap.length),
    `${volts(gap.peak)}${within(gap.error)}`,
    volts(gap.holds),
    times(gap.margin),
    volts(gap.startsAt),
  ]);
  const says =
    'Volts are peak at work; “starts at” stands across the gap’s own pair; how far off by the two meshes.';
  return block('Where discharge would start', ...cut(columns, rows), tag('p', { class: 'note' }, says));
}

function cut(columns: readonly Column[], rows: readonly (readonly string[])[]): readonly Content[] {
  const left = rows.length - ROOM;
  if (left <= 0) return rows.length === 0 ? [] : [table(columns, rows)];
  const rest = `${left} more of these are told by the command “field”.`;
  return [table(columns, rows.slice(0, ROOM)), tag('p', { class: 'note' }, rest)];
}
