import { remarkSays } from '#words/verdict/remark-words.ts';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { attachedDesign } from '#papers/html/evidence/attached.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { TOOL_VERSION } from '#words/text/tool-version.ts';
import { studyOf } from '#judge/study.ts';
import { greenhouse, greenhouseDesign } from '#test/papers/greenhouse.ts';

const DESIGN = JSON.stringify({ title: 'a </script><!-- \u2028 & <b>' });
const report = (title?: string, black = false) =>
  reportHtml({
    design: greenhouseDesign(title),
    judgement: studyOf(greenhouseDesign(title), greenhouse),
    designText: DESIGN,
    black,
  });

describe('reportHtml', () => {
  const html = report();

  it('should say verdict, edition and how far it reaches', () => {
    expect(html).toContain('Falls short');
    expect(html).toContain('judged to IEC 62368-1, 2018');
    expect(html).toContain('inside the winding window only; not judged: pins and wiring outside');
  });

  it('should hold every figure of the verdict', () => {
    for (const figure of [
      '4.83 of 5.6 mm',
      '5.03 of 5.6 mm',
      '5.18 of 5.6 mm',
      '2.8 mm',
      '1.5 mm',
      '4.0 kV',
      '2.83 kV',
      '3.72 of 5.6 mm',
      '272 V',
    ])
      expect(html).toContain(figure);
    for (const { field } of greenhouse.verdict.assumptions) expect(html).toContain(field);
    for (const remark of greenhouse.verdict.remarks) expect(html).toContain(remarkSays(remark));
  });

  it('should draw the section and each weak spot under ids of their own', () => {
    expect(html.match(/<figure>/g)?.length).toBe(1 + 3);
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('should show spots whose pictures are equal in one, with the words of each', () => {
    const { verdict } = greenhouse;
    const [first, ...others] = verdict.weakSpots;
    const twice = { ...verdict, weakSpots: [first!, { ...first! }, ...others] };
    const study = studyOf(greenhouseDesign(), { ...greenhouse, verdict: twice });
    const merged = reportHtml({ design: greenhouseDesign(), judgement: study, designText: DESIGN });
    const pictures = (of: string) =>
      [...of.matchAll(/aria-label="Spot ([\d, ]+):/g)].map((found) => found[1]);
    const numbers = verdict.weakSpots.map((_, k) => `${k + 1}`);
    expect(pictures(html)).toEqual(numbers);
    expect(pictures(merged)).toEqual(['1, 2', ...numbers.slice(1).map((k) => `${Number(k) + 1}`)]);
    const captions = (of: string) => of.match(/<figcaption><b>\d/g)?.length;
    expect(captions(merged)).toBe(captions(html)! + 1);
  });

  it('should carry the cautions', () => {
    expect(html).toContain('discharge the bulk capacitor');
  });

  it('should need nothing from outside and run nothing', () => {
    const links = html
      .replace(/http:\/\/www\.w3\.org\/2000\/svg/g, '')
      .match(/https?:|@import|url\((?!#)|<link|<iframe/g);
    expect(links).toBeNull();
    expect(html.match(/<script[^>]*>/g)).toEqual([
      '<script type="application/json" id="layerwright-design">',
    ]);
  });

  it('should give the attached design back as it was', () => {
    expect(JSON.parse(attachedDesign(html) ?? '')).toEqual(JSON.parse(DESIGN));
    expect(attachedDesign(DESIGN)).toBeNull();
  });

  it('should be the same bytes for the same input', () => {
    expect(report()).toBe(html);
  });

  it('should render hostile text harmless', () => {
    const hostile = report('<img src=x onerror=alert(1)>"</title></style><script>alert(1)</script>\u202e');
    expect(hostile).not.toContain('<img src=x');
    expect(hostile.match(/<script/g)?.length).toBe(1);
    expect(hostile.match(/<\/style>/g)?.length).toBe(1);
    expect(hostile).not.toContain('\u202e');
  });

  it('should print in black and greys alone where asked', () => {
    const colours = report(undefined, true).match(/#[0-9a-f]{6}\b/g) ?? [];
    for (const colour of colours) expect(colour.slice(1, 3) + colour.slice(3, 5)).toBe(colour.slice(3, 7));
  });

  it('should never call a build safe', () => {
    expect(html.toLowerCase()).not.toMatch(/\bsafe\b|complian/);
  });
});

describe('TOOL_VERSION', () => {
  it('should be that of the package', () => {
    const file = new URL('../../../../package.json', import.meta.url);
    expect(JSON.parse(readFileSync(file, 'utf8')).version).toBe(TOOL_VERSION);
  });
});
