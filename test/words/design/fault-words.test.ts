import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { faultBeside, faultWords } from '#words/design/fault-words.ts';
import greenhouse from '#demos/greenhouse-timer.json' with { type: 'json' };

const faultsOf = (file: unknown) => {
  const read = readDesign(file, knownIds);
  return read.kind === 'bad' ? read.faults : [];
};

describe('words of a fault', () => {
  it('should name the field as the page calls it, what stands there and what was expected', () => {
    const file = structuredClone(greenhouse);
    file.layers[2]!.margins!.left.width = '0.8 kg';
    const [fault] = faultsOf(file);
    expect(faultWords(file, fault!)).toMatch(/^Left margin, layer 3 is "0\.8 kg"; expected a length/);
    expect(faultBeside(fault!)).toMatch(/^"0\.8 kg": expected a length/);
  });

  it('should say that a field is missing, and name the owner of one that has an id', () => {
    const { wire, ...rest } = greenhouse.windings[1]!;
    expect(wire).toBeDefined();
    const file = { ...greenhouse, windings: [greenhouse.windings[0], rest, greenhouse.windings[2]] };
    const [fault] = faultsOf(file);
    expect(faultWords(file as never, fault!)).toMatch(/^Wire, winding S is missing; expected/);
    expect(faultBeside(fault!)).toMatch(/^expected /);
  });

  it('should stand for the whole file where no field is at fault', () => {
    const [fault] = faultsOf([]);
    expect(faultWords({}, fault!)).toMatch(/^The file is a list of 0/);
  });
});
