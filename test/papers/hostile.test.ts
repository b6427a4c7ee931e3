import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { csvOf } from '#papers/csv.ts';
import { dxfOf } from '#drawing/dxf/dxf.ts';
import { judgedBuild, overviewHtml } from '#papers/html/overview.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { winderSheet } from '#papers/html/winder-sheet.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import { verdictText } from '#words/verdict/verdict-text.ts';
import { study } from '#judge/study.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { hostileDesign } from './hostile-design.ts';
import { tagsOf } from './well-formed.ts';

const read = readDesign(hostileDesign, knownIds);
if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
const { design } = read;
const judgement = study(design);
const scene = sceneOf(design, judgement, 'plain');
if (scene === null) throw new Error('a plain section is always there');

const faces: readonly (readonly [name: string, html: string, scripts: number])[] = [
  ['report', reportHtml({ design, judgement, designText: JSON.stringify(hostileDesign) }), 1],
  ['winding sheet', winderSheet({ design, judgement }), 0],
  [
    'overview',
    overviewHtml([
      judgedBuild(design.title, 'a.html', design, judgement.verdict),
      { kind: 'bad', file: design.title, says: design.title },
    ]),
    1,
  ],
  ['drawing', svgOf(scene, { heading: design.title }), 0],
];

describe('hostile text', () => {
  it.each(faces)('should be harmless in the %s', (_, html, scripts) => {
    expect(html.match(/<script/g)?.length ?? 0).toBe(scripts);
    expect(html.match(/<\/script/g)?.length ?? 0).toBe(scripts);
    expect(html).not.toMatch(/<img|<iframe|<object|<embed|<link|<base|<form/);
    expect(html).not.toMatch(/(?:href|src|action)="(?:javascript|data:text|https?):/i);
    expect(html.replace(/<script[\s\S]*?<\/script>/g, '')).not.toContain('\u202e');
    expect(html.replace(/<[^>]*>/g, '')).not.toMatch(/ onerror="/);
  });

  it('should leave the drawing well formed', () => {
    expect(tagsOf(svgOf(scene, { heading: design.title }))).not.toContain('script');
  });

  it('should keep to one line of a terminal and to plain signs where those are promised', () => {
    const lines = verdictText(design, judgement.verdict);
    // eslint-disable-next-line no-control-regex -- looked for
    expect(lines).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
    expect(dxfOf(scene)).toMatch(/^[\x20-\x7e\r\n]*$/);
    expect(csvOf(design, judgement.verdict)).not.toMatch(/^[=+@-]/m);
  });
});
