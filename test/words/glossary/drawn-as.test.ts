// Every term is drawn, from a build that has what is to be seen, on a section that the real judge made.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { lookBox } from '#drawing/compose/look-box.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { readDesign } from '#model/read/read-design.ts';
import { drawnAs } from '#words/glossary/drawn-as.ts';
import { terms } from '#words/glossary/terms.ts';

const known = new Map<string, readonly Scene[]>();

function scenesOf(lesson: string): readonly Scene[] {
  const before = known.get(lesson);
  if (before !== undefined) return before;
  const json = JSON.parse(readFileSync(`static/lessons/${lesson}.json`, 'utf8')) as {
    readonly build: unknown;
    readonly pair: readonly [string, string];
  };
  const read = readDesign(json.build, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  const judgement = judge(read.design);
  const scenes = judgement.sections.flatMap(
    ({ name }) => sceneOf(read.design, judgement, name, { pair: json.pair }) ?? [],
  );
  known.set(lesson, scenes);
  return scenes;
}

describe('the drawing of a term', () => {
  it('should be there for each term and for nothing else', () => {
    expect(Object.keys(drawnAs).sort()).toEqual(terms.map(({ id }) => id).sort());
  });

  it.each(Object.entries(drawnAs))('should find what is to be seen: %s', (_, { lesson, look }) => {
    const boxes = scenesOf(lesson).map((scene) => lookBox(scene, look, 2.4));
    const found = boxes.find((box) => box !== null);
    expect(found).toBeDefined();
    expect((found!.x1 - found!.x0) / (found!.y1 - found!.y0)).toBeCloseTo(2.4, 6);
  });

  it('should have nothing to show of a sleeve where there is none', () => {
    expect(scenesOf('margin').map((scene) => lookBox(scene, 'sleeve', 2))).toEqual([null]);
  });
});
