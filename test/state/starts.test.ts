import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unmeasured } from '#model/begin/unmeasured.ts';
import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Design } from '#model/design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { demos } from '#state/begin/demos.ts';
import { constructions, designedBuild, type DesignWish } from '#state/begin/designed-build.ts';
import { examinedBuild } from '#state/begin/examined-build.ts';
import { Examination } from '#state/begin/examination.svelte.ts';
import { questions } from '#state/begin/questions.ts';

const judging = {
  read: (doc: unknown) => readDesign(doc, knownIds),
  judge: (design: Design) => Promise.resolve(judge(design)),
};

describe('starts', () => {
  it('should ask ten questions, each of which may be answered with not knowing', () => {
    expect(questions).toHaveLength(10);
    for (const { answers } of questions) expect(answers.map(({ id }) => id)).toContain('unknown');
  });

  it('should make a readable build of any answers', () => {
    const answers = fc.record(
      Object.fromEntries(
        questions.map(({ id, answers }) => [id, fc.constantFrom(...answers.map((each) => each.id))]),
      ),
    );
    fc.assert(
      fc.property(answers, (chosen) => {
        const examination = new Examination();
        for (const [question, answer] of Object.entries(chosen)) examination.choose(question, answer);
        const read = readDesign(examinedBuild(examination), knownIds);
        expect(read.kind === 'bad' ? read.faults : []).toEqual([]);
      }),
      { seed: 2611, numRuns: 300 },
    );
  });

  it('should say which figure of an answer cannot be taken', () => {
    const examination = new Examination();
    examination.choose('former', 'known');
    examination.type('width', 'wide');
    expect(examination.open.map(({ id }) => id)).toEqual(['width']);
  });

  it('should count a figure that was left empty as not known, not as the example in the field', () => {
    const examination = new Examination();
    for (const { id, answers } of questions) {
      const withFigures = answers.find(({ fields }) => fields !== undefined);
      if (withFigures) examination.choose(id, withFigures.id);
    }
    const build = examinedBuild(examination);
    expect(examination.open).toEqual([]);
    expect(build.former.chambers[0]?.width).toEqual({ value: '12 mm', plusMinus: '4 mm' });
    const [primary, tape] = build.layers;
    expect(primary).toMatchObject({ margins: { left: { width: 'unknown', filled: true } } });
    expect(tape).toMatchObject({
      plies: 'unknown',
      inset: { left: { value: '0.5 mm', plusMinus: '0.5 mm' } },
    });
    expect(build.windings[1]?.wire).toMatchObject({ conductor: 'unknown' });
    examination.type('width', '14 mm');
    examination.type('plies', '3');
    expect(examinedBuild(examination).former.chambers[0]?.width).toBe('14 mm');
  });

  it('should put unknown where nobody typed, never turns, wires or plies of its own', () => {
    const answers = fc.record(
      Object.fromEntries(
        questions.map(({ id, answers }) => [id, fc.constantFrom(...answers.map((each) => each.id))]),
      ),
    );
    fc.assert(
      fc.property(answers, (chosen) => {
        const examination = new Examination();
        for (const [question, answer] of Object.entries(chosen)) examination.choose(question, answer);
        const { windings, layers, surroundings } = examinedBuild(examination);
        for (const { wire } of windings) expect(wire).toMatchObject({ conductor: 'unknown' });
        for (const layer of layers) {
          if (layer.kind === 'winding') expect(layer.turns).toBe('unknown');
          if (layer.kind === 'tape')
            expect(layer).toMatchObject({ plies: 'unknown', plyThickness: 'unknown' });
          expect(layer).not.toHaveProperty('material');
        }
        expect(surroundings).toEqual({ hottestInsulation: 'unknown' });
      }),
      { seed: 2612, numRuns: 100 },
    );
  });

  it('should take both ends of a marked range of voltages', () => {
    const examination = new Examination();
    examination.choose('device', 'known');
    const supplyOf = (text: string) => {
      examination.type('supply', text);
      const { voltage, lowest } = examinedBuild(examination).supply;
      return [examination.open.length, voltage, lowest];
    };
    for (const text of ['100-240 V', '100 V - 240 V', '100–240 V~', '100 to 240V'])
      expect(supplyOf(text), text).toEqual([0, '240 V', '100 V']);
    expect(supplyOf('230 V')).toEqual([0, '230 V', undefined]);
    expect(supplyOf('')).toEqual([0, unmeasured.supply, undefined]);
    expect(supplyOf('100-240 kg')[0]).toBe(1);
  });

  const wish: Omit<DesignWish, 'former' | 'construction'> = {
    ...{ material: 'pbt', supply: '240 V', output: '12 V', turns: ['', ''], wires: ['', ''] },
    ...{ switching: '', reflected: '', spike: '', bond: '', gap: '' },
  };

  it('should begin a design with no figure of a converter, of turns or of wires that nobody gave', async () => {
    const former = { width: '14 mm', height: '5 mm', wall: '0.8 mm', flange: '0.8 mm' };
    const begun = { ...wish, former, construction: 'margins', material: '' } as const;
    const { doc, asked, laid } = await designedBuild(begun, judging);
    expect([doc.converter, doc.former.material]).toEqual([undefined, undefined]);
    expect(doc.windings.map(({ wire }) => wire.conductor)).toEqual(['unknown', 'unknown']);
    expect(doc.layers.flatMap((layer) => (layer.kind === 'winding' ? [layer.turns] : []))).toEqual([
      'unknown',
      'unknown',
    ]);
    expect(asked?.pair.stress.basis).toBe('floor');
    expect(laid?.judgement.verdict.fit).not.toBeNull();
    const given = { ...begun, switching: '65 kHz', reflected: '90 V', spike: '60 V' };
    expect((await designedBuild(given, judging)).asked?.pair.stress.basis).toBe('computed');
  });

  it('should say before that margins leave no room on a narrow former', async () => {
    const former = { width: '4.5 mm', height: '3 mm', wall: '0.8 mm', flange: '0.8 mm' };
    const { asked, margin, laid } = await designedBuild(
      { ...wish, former, construction: 'margins' },
      judging,
    );
    expect(asked?.grade).toBe('reinforced');
    expect(2 * margin).toBeGreaterThanOrEqual(asked?.creepage ?? Infinity);
    expect(laid).toBeNull();
  });

  it('should ask the same creepage before as of what is laid out, on the worst group where a lead may touch', async () => {
    const former = { width: '10 mm', height: '4 mm', wall: '', flange: '' };
    // 240 V on group IIIb between 2.0 (200 V) and 2.5 (250 V): 2 x (2 + 40/50 x 0.5) = 4.8
    for (const { id } of constructions) {
      const wished = { ...wish, former, construction: id, material: '' };
      const { asked, margin, laid } = await designedBuild(wished, judging);
      const [pair] = laid?.judgement.verdict.pairs ?? [];
      expect(asked?.pair.required?.creepage, id).toMatchObject({ reinforced: 4.8, materialGroup: 'IIIb' });
      expect([0, 2.4], id).toContain(margin);
      expect(pair?.required?.creepage, id).toMatchObject({ reinforced: 4.8, materialGroup: 'IIIb' });
      if (pair?.limiting != null) expect(pair.limiting.required, id).toBe(4.8);
    }
  });

  for (const { id, name } of constructions)
    it(`should start a design with ${name.toLowerCase()} that meets or is not shown, and say what is asked`, async () => {
      const former = { width: '14 mm', height: '5 mm', wall: '0.8 mm', flange: '0.8 mm' };
      const { doc, asked } = await designedBuild(
        { ...wish, former, construction: id, turns: ['60', '8'], wires: ['0.2 mm', '0.4 mm'] },
        judging,
      );
      const read = readDesign(doc, knownIds);
      expect(read.kind === 'bad' ? read.faults : []).toEqual([]);
      expect(asked?.grade).toBe('reinforced');
      expect(asked?.creepage).toBeGreaterThan(4);
      if (read.kind === 'design') expect(judge(read.design).verdict.verdict).not.toBe('falls-short');
    });

  it('should have invented builds whose files say that they are', async () => {
    expect(demos.length).toBeGreaterThanOrEqual(10);
    for (const demo of demos) {
      const doc = await demo.load();
      expect(doc.notes, demo.id).toMatch(/invented/i);
      const read = readDesign(doc, knownIds);
      expect(read.kind === 'bad' ? read.faults : [], demo.id).toEqual([]);
    }
  });
});
