// What of a tape is thick: its film to the nanometre, and nothing of the adhesive.

import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import thickFilm from '#test/cases/thick-film.json' with { type: 'json' };

/** Shortest creepage through one ply at most, mm, with one ply of tape of this film. */
function throughOne(film: string, plyThickness: string) {
  const design = JSON.parse(JSON.stringify(thickFilm.design)) as {
    layers: { kind: string; film?: string; plyThickness?: string }[];
  };
  for (const layer of design.layers) if (layer.kind === 'tape') Object.assign(layer, { film, plyThickness });
  const read = readDesign(design, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  const { pairs } = judge(read.design).verdict;
  return pairs[0]!.paths.find(({ metric, plies }) => metric === 'creepage' && plies === 1)!.length;
}

describe('film of a tape', () => {
  it('should be strong from the least thickness up, whatever the ply is with its adhesive', () => {
    expect(throughOne('0.4 mm', '0.45 mm')).toBeGreaterThan(1);
    expect(throughOne('0.3995 mm', '0.45 mm')).toBe(0);
    expect(throughOne('0.399999 mm', '0.4 mm')).toBe(0);
  });
});
