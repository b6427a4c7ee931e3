import { describe, expect, it } from 'vitest';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf, type SvgOptions } from '#drawing/svg/svg.ts';
import { greenhouse, greenhouseDesign } from '#test/papers/greenhouse.ts';
import { tagsOf } from '#test/papers/well-formed.ts';

function draw(section: string, options: SvgOptions = {}): string {
  const scene = sceneOf(greenhouseDesign(), greenhouse, section);
  if (scene === null) throw new Error(`no section ${section}`);
  return svgOf(scene, options);
}

describe('svgOf', () => {
  it.each(greenhouse.sections.map(({ name }) => name))('should be well formed for %s', (name) => {
    expect(tagsOf(draw(name))[0]).toBe('svg');
  });

  it('should draw every turn and every ply', () => {
    const drawn = draw('plain');
    expect(drawn.match(/<use /g)?.length).toBe(131);
    expect(drawn).toContain('4.83 of 5.6 mm');
    expect(drawn).toContain('0.77 short');
  });

  it('should need nothing from outside', () => {
    const drawn = draw('plain');
    expect(drawn.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|<script|<image|@import/);
  });

  it('should be the same for the same input', () => {
    expect(draw('plain')).toBe(draw('plain'));
  });

  it('should use black, white and greys alone on paper', () => {
    const colours = draw('plain', { theme: 'print' }).match(/#[0-9a-f]{6}/g) ?? [];
    expect(colours.length).toBeGreaterThan(0);
    for (const colour of colours) expect(colour.slice(1, 3) + colour.slice(3, 5)).toBe(colour.slice(3, 7));
  });

  it('should render hostile text harmless', () => {
    const heading = '<img onerror="x">\u202e & \u0000 "\'\ud800';
    const drawn = draw('plain', { heading });
    expect(tagsOf(drawn)).not.toContain('img');
    expect(drawn).not.toMatch(/[\u0000\u202e]/); // eslint-disable-line no-control-regex -- looked for
  });

  it('should give every id its prefix', () => {
    const ids = [...draw('plain', { prefix: 'spot1-' }).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    // hatches of core, former or block, and one figure a kind of turn
    expect(ids.length).toBeGreaterThanOrEqual(5);
    for (const id of ids) expect(id).toMatch(/^spot1-/);
  });

  it('should say so when the radial scale is stretched', () => {
    expect(draw('plain', { radialStretch: 4 })).toContain('drawn 4 times as high as wide');
    expect(draw('plain')).toContain('same scale both ways');
  });
});
