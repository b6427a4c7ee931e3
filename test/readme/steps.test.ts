// The README's stepped picture tells what the tool says today, step by step, and ends with a build that meets.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { escapeText } from '#words/text/escape-text.ts';
import { frames, picture } from './steps.ts';

const words = (svg: string): string => svg.replace(/<\/text><text[^>]*>/g, ' ').replace(/\s+/g, ' ');

describe('the picture of the README', () => {
  it('should say at every step what is judged today', () => {
    const all = frames();
    const kept = readFileSync('static/steps.svg', 'utf8');
    for (const { says, verdict, headline } of all)
      expect(words(kept)).toContain(words(escapeText(`${says} ${verdict} ${headline}`)));
    expect(all.map(({ verdict }) => verdict)).toEqual([
      'Not shown.',
      'Not shown.',
      'Falls short.',
      'Falls short.',
      'Not shown.',
      'Meets.',
    ]);
    expect(kept.match(/class="step/g)).toHaveLength(all.length);
  });

  it('should name its patterns apart, so that no step is filled by another', () => {
    const ids = [...picture(frames()).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids.length).toBeGreaterThan(0);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
