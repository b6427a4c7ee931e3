import { describe, expect, it } from 'vitest';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { Narrowing, reachOf } from '#state/apart/narrowing.svelte.ts';
import {
  apartSteps,
  newWindingCameOff,
  screenCameOff,
  tapeCameOff,
  untouchedBuild,
  windingCameOff,
} from '#state/begin/taking-apart.ts';

function verdictOf(doc: DesignFile) {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]!.says);
  return judge(read.design).verdict;
}

/** Tape, output, tape, primary came off. */
const coil = (): DesignFile =>
  newWindingCameOff(tapeCameOff(newWindingCameOff(tapeCameOff(untouchedBuild(), true), 'out'), true), 'pri');

describe('taking apart', () => {
  it('should begin with a build that can be judged and claims nothing', () => {
    const verdict = verdictOf(untouchedBuild());
    expect(verdict.verdict).not.toBe('falls-short');
    expect(untouchedBuild().origin).toBe('dissected');
  });

  it('should put unknown where nobody has looked, and leave the stack unopened', () => {
    const doc = screenCameOff(coil());
    expect(doc.unopened).toBe(true);
    for (const { wire } of doc.windings) expect(wire).toEqual({ kind: 'unknown', conductor: 'unknown' });
    for (const layer of doc.layers) {
      if (layer.kind === 'winding') expect(layer.turns).toBe('unknown');
      if (layer.kind === 'tape') expect(layer).toMatchObject({ plies: 'unknown', plyThickness: 'unknown' });
      expect(layer).not.toHaveProperty('material');
    }
  });

  it('should put what comes off inside all that came off before', () => {
    const doc = coil();
    expect(doc.layers.map(({ kind }) => kind)).toEqual(['winding', 'tape', 'winding', 'tape']);
    expect(doc.windings.map(({ circuit }) => circuit)).toEqual(['out', 'pri']);
    expect(apartSteps(doc).map((step) => (step.kind === 'layer' ? step.layer : step.kind))).toEqual([
      'label',
      'outside',
      'bridges',
      'core',
      3,
      2,
      1,
      0,
      'next',
      'former',
    ]);
  });

  it('should keep the steps of layers that came off when more comes off from under them', () => {
    const before = apartSteps(coil()).filter(({ kind }) => kind === 'layer');
    const after = apartSteps(screenCameOff(coil())).filter(({ kind }) => kind === 'layer');
    expect(after.slice(0, 4).map(({ id }) => id)).toEqual(before.map(({ id }) => id));
  });

  it('should say that the link of a winding in two parts is not known', () => {
    const primary = coil().windings.find(({ circuit }) => circuit === 'pri')!.id;
    const doc = windingCameOff(tapeCameOff(coil(), false), primary);
    expect(doc.windings.find(({ id }) => id === primary)!.links).toBe('unknown');
    expect(() => verdictOf(doc)).not.toThrow();
  });

  it('should count what nobody looked at as the worst, and narrow with each fact', () => {
    const doc = coil();
    const start = verdictOf(doc);
    expect(start.verdict).toBe('not-shown');
    const [reach] = reachOf(start);
    expect(reach!.worst).not.toBe(reach!.best);
    const narrowing = new Narrowing();
    narrowing.note('as it lay here', start);
    narrowing.note('core', verdictOf(editDesign(doc, 'core.bond', 'floating')));
    const [now, first] = narrowing.steps;
    expect(now!.unknown).toBe(first!.unknown - 1);
  });
});
