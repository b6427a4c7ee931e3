// The section handed to a finite-element package: the script that is written, and what the package made of it. Script and
// answer are kept beside the reference values of the field; FreeFem++ 4.11 (Debian), its quadratic elements, run once.
// `npm run bench:field` runs it anew where it is installed.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { at } from '#field/solve/capacitance.ts';
import { finished } from '#field/solve/finished.ts';
import { solveField } from '#field/solve/solve-field.ts';
import { drawnField } from '#judge/drawn-field/drawn-field.ts';
import { fieldCases } from '#judge/field/field-cases.ts';
import { FINE } from '#judge/field/field-of.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';
import { finiteElementScript, stoodBack } from '#papers/finite-elements.ts';

const kept = (name: string): string =>
  readFileSync(new URL(`../field/reference/${name}`, import.meta.url), 'utf8');

const json: unknown = JSON.parse(readFileSync('static/demos/label-printer.json', 'utf8'));
const read = readDesign(json, knownIds);
if (read.kind === 'bad') throw new Error('a demo that cannot be read');
const { design } = read;
const studied = study(design);
const drawn = drawnField(design, studied.sections[0]!, studied.turns.get('plain') ?? [], null);
const section = stoodBack(drawn.section);
const volts = fieldCases(design, drawn, studied.stress.pairs)[0]!.electrodes;

describe('the section as a finite-element script', () => {
  it('should be the one that the kept answer belongs to', () => {
    expect(finiteElementScript(section, volts, 48)).toBe(kept('label-printer.edp'));
  });

  it('should be answered by the package as by the solver, within 0.2 %', () => {
    const solved = finished(solveField({ section, states: [{ electrodes: volts, floating: [] }], ...FINE }));
    if (solved.kind !== 'solved') throw new Error(solved.kind);
    const answer = kept('label-printer.txt');
    const entries = [...answer.matchAll(/^C (\d+) (\d+) (\S+)$/gm)].map((found) =>
      found.slice(1).map(Number),
    );
    expect(entries).toHaveLength((section.conductors.length * (section.conductors.length + 1)) / 2);
    for (const [i = NaN, k = NaN, value = NaN] of entries)
      expect(Math.abs(at(solved.capacitance, i, k) / value - 1), `${i} ${k}`).toBeLessThan(2e-3);
    const { charges } = solved.states[0]!;
    const energy = charges.reduce((sum, charge, i) => sum + (charge * volts[i]!) / 2, 0);
    // of one mesh, where capacitances are carried on from two
    expect(Math.abs(energy / Number(/^energy (\S+)$/m.exec(answer)![1]) - 1)).toBeLessThan(5e-3);
  });
});
