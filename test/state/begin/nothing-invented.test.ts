// Every action that adds something to a build, driven with nothing given: no figure may stand in the file then that was not
// there before. What may is listed with its reason.

import { describe, expect, it } from 'vitest';
import { blankDesign } from '#model/begin/blank-design.ts';
import { isUnmeasured } from '#model/begin/unmeasured.ts';
import { addedThings, begunEntries, begunRecords } from '#model/edit/added-things.ts';
import * as circuitEdits from '#model/edit/circuit-edits.ts';
import * as layerEdits from '#model/edit/layer-edits.ts';
import * as layersText from '#model/edit/layers-text.ts';
import { putIn } from '#model/edit/put-in.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { constructions, designedBuild, type DesignWish } from '#state/begin/designed-build.ts';
import { examinedBuild } from '#state/begin/examined-build.ts';
import { Examination } from '#state/begin/examination.svelte.ts';
import { questions } from '#state/begin/questions.ts';
import * as apart from '#state/begin/taking-apart.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { Placing } from '#state/document/placing.svelte.ts';
import { firstBuild } from '#state/begin/demos.ts';

/** Texts that hold digits and are no figure. */
const NO_FIGURE =
  /^(layerwright-design\/1|iec-[\d-]+|polyester-tape-25|IIIa|IIIb|[PSA]\d?|out\d?|CY1\d?|E1\d?|part\d?|Output \d|variant \d)$/;

/** Every figure of a value: numbers, and texts with a number in them; intervals of what is not measured left out. */
function figuresIn(value: unknown, key = ''): readonly string[] {
  if (isUnmeasured(value)) return [];
  if (typeof value === 'number') return key === 'chamber' ? [] : [`${key}: ${value}`];
  if (typeof value === 'string')
    return /\d/.test(value) && !NO_FIGURE.test(value) ? [`${key}: ${value}`] : [];
  if (Array.isArray(value)) return value.flatMap((each) => figuresIn(each, key));
  return typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([name, each]) => figuresIn(each, name))
    : [];
}

/** Figures that stand in `after` more often than in `before`. */
function invented(before: unknown, after: unknown): readonly string[] {
  const left = [...figuresIn(before)];
  return figuresIn(after).filter((figure) => {
    const place = left.indexOf(figure);
    if (place >= 0) left.splice(place, 1);
    return place < 0;
  });
}

const converting = addedThings.converter(firstBuild);

describe('nothing is invented', () => {
  it('should see a figure where there is one, in whatever form', () => {
    expect(invented({}, { plies: 3, inset: { left: '0.5 mm' } })).toEqual(['plies: 3', 'left: 0.5 mm']);
    expect(invented(firstBuild, firstBuild)).toEqual([]);
    const twice = { ...firstBuild, layers: [...firstBuild.layers, ...firstBuild.layers] };
    expect(invented(firstBuild, twice).length).toBeGreaterThan(5);
  });

  for (const [name, add] of Object.entries(addedThings))
    it(`should add ${name} without a figure`, () => {
      const before = ['bulk', 'output', 'variant'].includes(name) ? converting : firstBuild;
      const after = add(before);
      expect(after).not.toBe(before);
      expect(invented(before, after)).toEqual([]);
      const empty = add(name === 'converter' ? blankDesign() : addedThings.converter(blankDesign()));
      expect(figuresIn(empty)).toEqual([]);
    });

  it('should begin what is filled in beside the file without a figure', () => {
    for (const [name, begin] of Object.entries(begunEntries))
      expect(figuresIn(begin(firstBuild)), name).toEqual([]);
  });

  it('should begin every record that a choice puts in without a figure', () => {
    for (const [name, record] of Object.entries(begunRecords)) expect(figuresIn(record), name).toEqual([]);
  });

  it('should know every edit of the room, so that a new one is driven too', () => {
    expect(Object.keys(circuitEdits).sort()).toEqual(
      ['addWinding', 'freeWindingId', 'removeCircuit', 'removeWinding', 'renameWinding'].sort(),
    );
    expect(Object.keys(layerEdits).sort()).toEqual(
      ['addLayer', 'convertLayer', 'duplicateLayers', 'moveLayers', 'newLayer', 'removeLayers'].sort(),
    );
    expect(Object.keys(layersText).sort()).toEqual(['layersText', 'pasteLayers']);
    expect(Object.keys(apart).sort()).toEqual(
      [...CAME_OFF, 'apartSteps', 'untouchedBuild', 'windingCameOff', 'newWindingCameOff'].sort(),
    );
  });

  it('should add windings and layers without a figure', () => {
    for (const { id } of firstBuild.circuits)
      expect(invented(firstBuild, circuitEdits.addWinding(firstBuild, id))).toEqual([]);
    for (const kind of ['tape', 'screen', 'winding'] as const) {
      expect(figuresIn(layerEdits.newLayer(firstBuild, kind)), kind).toEqual([]);
      firstBuild.layers.forEach((_, i) =>
        expect(invented(firstBuild, layerEdits.convertLayer(firstBuild, i, kind)), kind).toEqual([]),
      );
    }
  });

  it('should begin a blank build and one to be taken apart without a figure', () => {
    expect(figuresIn(blankDesign())).toEqual([]);
    expect(figuresIn(apart.untouchedBuild())).toEqual([]);
    expect(blankDesign().core).toEqual({ bond: 'unknown', outerGap: 'unknown' });
  });

  it('should judge a supply that nobody read at the highest of its interval, and list it', () => {
    const unread = { ...firstBuild, supply: { ...firstBuild.supply, voltage: blankDesign().supply.voltage } };
    const read = readDesign(unread, knownIds);
    if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
    expect(read.design.supply.voltage).toMatchObject({ value: 240, plusMinus: 0 });
    expect(read.design.defaulted).toContain('supply.voltage');
  });

  it('should let come off what nobody measured without a figure', () => {
    const wound = apart.newWindingCameOff(apart.untouchedBuild(), 'out');
    const more = apart.windingCameOff(wound, wound.windings[0]!.id);
    const taped = apart.tapeCameOff(apart.tapeCameOff(more, true), false);
    expect(figuresIn(apart.screenCameOff(taped))).toEqual([]);
    expect(readDesign(apart.screenCameOff(taped), knownIds).kind).toBe('design');
  });

  it('should put nothing on the card for what lies here, of a proposal neither', () => {
    for (const origin of ['proposed', 'dissected'] as const)
      for (const kind of ['winding', 'tape', 'screen'] as const) {
        const doc: DesignFile = { ...firstBuild, origin };
        const editor = new Editor(doc, judged);
        const placing = new Placing(editor);
        placing.open(doc.layers.length);
        placing.set({ kind });
        const { wish } = placing;
        expect(wish).not.toBeNull();
        expect(invented(doc, putIn(doc, wish!)), kind).toEqual([]);
        expect(wish!.filled).toBe(false);
      }
  });

  it('should write no figure of an examination in which nothing was typed', () => {
    // what is chosen is said: wire with three certified layers has three, and is given as such
    const given = ['insulationLayers: 3'];
    for (let turn = 0; turn < 6; turn += 1) {
      const examination = new Examination();
      for (const { id, answers } of questions) examination.choose(id, answers[turn % answers.length]!.id);
      expect(figuresIn(examinedBuild(examination)).filter((figure) => !given.includes(figure))).toEqual([]);
    }
    expect(figuresIn(examinedBuild(new Examination()))).toEqual([]);
  });

  const wish: Omit<DesignWish, 'construction'> = {
    former: { width: '17 mm', height: '5.5 mm', wall: '', flange: '' },
    ...{ material: '', bond: '', gap: '', supply: '230 V', output: '', turns: ['', ''], wires: ['', ''] },
    ...{ switching: '', reflected: '', spike: '' },
  };

  for (const construction of constructions)
    it(`should lay out ${construction.name.toLowerCase()} with what was typed, what its words say and what is asked`, async () => {
      const { doc, margin } = await designedBuild({ ...wish, construction: construction.id }, judgedOnce());
      const said = constructions
        .filter(({ id }) => id === construction.id || id === 'margins')
        .map(({ says }) => says)
        .join(' ');
      const typed = ['width: 17 mm', 'height: 5.5 mm', 'voltage: 230 V'];
      // both chambers share the room that is left beside the divider
      const follows = ['width: 7.75 mm', `width: ${margin} mm`, `into: ${margin} mm`];
      const figures = figuresIn(doc).filter((each) => ![...typed, ...follows].includes(each));
      for (const figure of figures) {
        const [, key = '', value = ''] = /^(\w+): (.*)$/.exec(figure) ?? [];
        const words =
          key === 'plies' ? new RegExp(`\\b${value} (ply|plies)\\b`) : new RegExp(`\\b${value}\\b`);
        expect(said, figure).toMatch(words);
      }
    });
});

const CAME_OFF = ['tapeCameOff', 'screenCameOff'];

const judged = { read: (doc: unknown) => readDesign(doc, knownIds), judge };

/** What is asked is judged; what comes of it is not looked at here. */
function judgedOnce(): Parameters<typeof designedBuild>[1] {
  let isFirst = true;
  return {
    ...judged,
    judge: (design) => {
      const judgement = isFirst ? judge(design) : null;
      isFirst = false;
      return Promise.resolve(judgement);
    },
  };
}
