// Sentences of weak spots name what makes them: the rating of a part, the class that is not known.

import { expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { MARGINS, verdictWith } from '#test/judge/margin-build.ts';
import { spotSays } from '#words/spots/spot-says.ts';

const told = (changes: Changes): readonly string[] =>
  verdictWith(changes).weakSpots.map((spot) => spotSays(spot));

const Y1 = { id: 'CY1', kind: 'capacitor', between: ['pri', 'out'], capacitance: '1 nF', safetyClass: 'Y1' };

it('should tell a part rated between the mains and the working voltage by its rating, not by its class', () => {
  // 240 V mains, 250 V rms between the circuits
  const [said = '', ...more] = told({ bridges: [{ ...Y1, rated: '245 V' }] });
  expect(said).toMatch(/CY1 is rated below the working voltage between its circuits/);
  expect(said).not.toContain('not known to be a safety part');
  expect(more).toEqual([]);
});

it('should not tell the limit of the lowest class as that of a class that is known', () => {
  // no class: held to class 105, 100 degC less 10 K by thermocouple
  const surroundings = { hottestInsulation: '95 degC', temperature: { method: 'thermocouple' } };
  const [said = ''] = told({ surroundings, 'layers[1].material': undefined });
  expect(said).toBe(
    'The hottest insulation is at 95 degC; the rule book allows 90 degC, if what has no class is of the lowest.',
  );
});

it('should tell a layer of unknown turns over the core as a stack that reaches the rim', () => {
  const [said = ''] = told({ 'layers[0].turns': 'unknown' });
  expect(said).toMatch(/runs over core.*, if the stack reaches the rim\.$/);
});

it('should tell a tracking group that is not known as the worst, in words', () => {
  const entry = (a: string, b: string, length: string) => ({
    ...{ between: [a, b], what: 'pins' },
    ...{ clearance: length, creepage: length },
  });
  const said = told({ outside: [entry('pri', 'core', '2 mm'), entry('core', 'out', '2.9 mm')] }).join(' ');
  expect(said).toContain('if the surface there is of tracking group IIIb.');
});

it('should tell a foil that handling pushes to a flange as what drifts, once for both sides', () => {
  // 3 mm and 0.18 up the flange to the foil: 3.18 of 5
  const foil = {
    kind: 'screen',
    circuit: 'out',
    thickness: '0.05 mm',
    inset: { left: '3 mm', right: '3 mm' },
  };
  const said = told({ 'layers[2]': foil }).filter((each) => each.includes('can wander'));
  expect(said).toEqual([
    'The screen touches no solid at both edges and can wander: 3.18 mm where 5.00 mm would do for reinforced insulation; basic insulation stands there.',
  ]);
});

it('should tell a certified cover beyond its test as too weak, not as too few plies', () => {
  // 2.8 kV rms is 3.96 kV peak of 4.0
  const wire = {
    kind: 'layer-insulated',
    conductor: '0.4 mm',
    overallDiameter: '0.6 mm',
    insulationLayers: 3,
  };
  const certified = { ...wire, approval: 'wire-annex', withstand: '2.8 kV' };
  const layers = [
    { kind: 'winding', winding: 'P', turns: 60, margins: MARGINS },
    { kind: 'winding', winding: 'S', turns: 8, margins: MARGINS },
  ];
  const [spot] = verdictWith({ layers, 'windings[1].wire': certified }).weakSpots;
  expect(spot?.kind).toBe('weak-ply');
  expect(spot && spotSays(spot)).toBe(
    'One layer lies between, but it is not shown to withstand the test for reinforced insulation; basic insulation stands there, if the cover of S stands no more than is shown of it.',
  );
});
