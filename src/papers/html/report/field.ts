// The field in the report, on a page of its own: picture, gaps, capacitances, on what it stands.

import { fieldSvg, gapSvg } from '#drawing/field/field-svg.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { fieldBasis, fieldHeadline } from '#words/field/field-headline.ts';
import { fieldBlocks } from '#words/field/field-text.ts';
import { block, raw, tag, type Content } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

export function field({ design, judgement, field: picture, theme }: ReportParts): Content {
  if (picture === null) return null;
  const { report } = picture;
  const scene = sceneOf(design, judgement, report.section);
  if (scene === null) return null;
  const look = { theme: theme.name, heading: null, says: '', lines: true, picked: null } as const;
  const whole = fieldSvg(scene, picture, { ...look, width: 900, prefix: 'field-' });
  const close = gapSvg(scene, picture, 0, { ...look, width: 420, prefix: 'gap-' });
  const caption = 'Field strength in steps, lines of equal potential; gaps are numbered by their margin.';
  const told = fieldBlocks(design, report);
  return tag(
    'div',
    { class: 'own-page' },
    block('The field of the section', tag('p', { class: 'headline' }, fieldHeadline(design, report))),
    whole === '' ? null : tag('figure', {}, raw(whole), tag('figcaption', {}, caption)),
    close === '' ? null : tag('figure', {}, raw(close), tag('figcaption', {}, 'Gap 1, close.')),
    told.map(({ title, lines }) =>
      block(
        title,
        lines.map((line) => tag('p', {}, line)),
      ),
    ),
    fieldBasis(design, report).map((line) => tag('p', { class: 'note' }, line)),
  );
}
