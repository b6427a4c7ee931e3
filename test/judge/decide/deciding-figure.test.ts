import { describe, expect, it } from 'vitest';
import { decidingFigure, type Deciding, type JudgeFile } from '#judge/decide/deciding-figure.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { judge } from '#judge/judging/judge.ts';
import { pairAnswers } from '#judge/judging/pair-answers.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import hedge from '#demos/hedge-trimmer-charger.json' with { type: 'json' };

const meets = hedge as DesignFile;

const cache = new PathCache();

/** As the page asks. */
const judgeFile: JudgeFile = (doc) => {
  const read = readDesign(doc, knownIds);
  return read.kind === 'bad' ? null : { pairs: pairAnswers(read.design, cache) };
};

function wholeVerdict(doc: DesignFile): Verdict | null {
  const read = readDesign(doc, knownIds);
  return read.kind === 'bad' ? null : judge(read.design).verdict;
}

function found(doc: DesignFile, field: string, between: [string, string] | null = null): Deciding {
  const search = decidingFigure(doc, { field, between }, judgeFile);
  for (;;) {
    const { done, value } = search.next();
    if (done === true) return value;
  }
}

type Figures = Extract<Deciding, { readonly kind: 'figures' }>;

/** The answer of the pairs that the search names, with the field at a figure. */
function answersAt(doc: DesignFile, field: string, value: unknown, { pairs }: Figures) {
  const verdict = wholeVerdict(editDesign(doc, field, value));
  const named = verdict!.pairs.filter(({ between }) => pairs.some((pair) => pair.join() === between.join()));
  const order = ['falls-short', 'not-shown', 'meets'];
  return order[Math.min(...named.map((pair) => order.indexOf(pair.verdict)))];
}

describe('deciding figure', () => {
  const margin = 'layers[0].margins.left.width';

  it('should find the margin that turns the verdict, to the hundredth of a millimetre', () => {
    const doc = editDesign(meets, margin, 'unknown');
    const deciding = found(doc, margin);
    if (deciding.kind !== 'figures') throw new Error(deciding.kind);
    expect(deciding.bands.length).toBeGreaterThan(1);
    for (const { from, answer } of deciding.bands) {
      expect(answersAt(doc, margin, `${from} mm`, deciding)).toBe(answer);
      if (from > 0)
        expect(answersAt(doc, margin, `${(from - 0.01).toFixed(2)} mm`, deciding)).not.toBe(answer);
    }
    // between the two the way leads through a turn of a wound block, of which nothing is shown
    expect(deciding.bands.map(({ answer }) => answer).slice(0, 3)).toEqual([
      'falls-short',
      'not-shown',
      'meets',
    ]);
  });

  it('should count plies', () => {
    const field = 'layers[3].plies';
    const doc = editDesign(meets, field, 'unknown');
    const deciding = found(doc, field);
    if (deciding.kind !== 'figures') throw new Error(deciding.kind);
    expect(deciding.unit).toBe('plies');
    const turn = deciding.bands.find(({ answer }) => answer === 'meets')!;
    expect(answersAt(doc, field, turn.from, deciding)).toBe('meets');
    expect(answersAt(doc, field, turn.from - 1, deciding)).not.toBe('meets');
  });

  it('should look only inside an interval', () => {
    const doc = editDesign(meets, margin, { value: '3 mm', plusMinus: '2 mm' });
    const deciding = found(doc, margin);
    if (deciding.kind !== 'figures') throw new Error(deciding.kind);
    expect(deciding.bands[0]!.from).toBe(1);
    expect(deciding.upTo).toBe(5);
  });

  it('should say where no figure alone changes anything, and where there is no figure', () => {
    const oneKnown = editDesign(meets, 'layers[0].margins.left.width', '0 mm');
    expect(found(editDesign(oneKnown, 'core.outerGap', 'unknown'), 'notes').kind).toBe('no-figure');
    expect(found(meets, 'former.flange').kind).toBe('nothing-alone');
  });

  it('should try each answer where there are few', () => {
    const between: [string, string] = ['pri', 'out'];
    const part = { id: 'CY1', kind: 'capacitor' as const, between, capacitance: '1 nF', rated: '400 V' };
    const deciding = found({ ...meets, bridges: [part] }, 'bridges[0].safetyClass');
    if (deciding.kind !== 'answers') throw new Error(deciding.kind);
    const of = (value: string) => deciding.answers.find((each) => each.value === value)!.answer;
    expect([of('none'), of('Y1')]).toEqual(['falls-short', 'meets']);
  });

  it('should find up to which working voltage a pair holds', () => {
    const pair = meets.workingVoltages?.[0];
    const doc = { ...meets, workingVoltages: [], converter: undefined } as unknown as DesignFile;
    const between = ['pri', 'out'] as [string, string];
    expect(pair?.between).toEqual(between);
    const deciding = found(doc, 'workingVoltages', between);
    if (deciding.kind !== 'figures') throw new Error(deciding.kind);
    expect([deciding.unit, deciding.bands[0]?.answer]).toEqual(['V rms', 'meets']);
    // not even with the turns of the wound blocks at their best
    const turn = deciding.bands.find(({ answer }) => answer === 'falls-short')!;
    const with_ = (volts: number) => [{ between, rms: `${volts} V`, peak: `${volts * Math.SQRT2} V` }];
    expect(answersAt(doc, 'workingVoltages', with_(turn.from), deciding)).toBe('falls-short');
    expect(answersAt(doc, 'workingVoltages', with_(turn.from - 10), deciding)).not.toBe('falls-short');
    const open = deciding.bands.find(({ answer }) => answer === 'not-shown')!;
    expect(answersAt(doc, 'workingVoltages', with_(open.from - 10), deciding)).toBe('meets');
  });

  it('should look for the peak where the rms is known', () => {
    const between = ['pri', 'out'] as [string, string];
    const doc = {
      ...meets,
      workingVoltages: [{ between, rms: '250 V', frequency: '65 kHz' }],
      converter: undefined,
    };
    const deciding = found(doc as unknown as DesignFile, 'workingVoltages', between);
    if (deciding.kind !== 'figures') throw new Error(deciding.kind);
    expect([deciding.unit, deciding.bands[0]?.answer]).toEqual(['V peak', 'meets']);
  });

  it('should pause after each judging', () => {
    const doc = editDesign(meets, margin, 'unknown');
    let judgings = 0;
    const search = decidingFigure(doc, { field: margin, between: null }, (each) => {
      judgings++;
      return judgeFile(each);
    });
    search.next();
    expect(judgings).toBe(1);
    search.next();
    expect(judgings).toBe(2);
  });
});
