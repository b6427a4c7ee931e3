// A conductor that floats never lengthens a path, and tying it to a circuit never raises a grade.

import { describe, expect, it } from 'vitest';
import { heightOf } from '#standards/ladder.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { copyOf, type File } from './change-design.ts';
import { check, type Complain } from './check-law.ts';

const TOLERANCE = 0.000_01;
/** Another circuit behind the barrier: to it and from it basic insulation is asked, so that its paths are told. */
const OWN = { id: 'own', name: 'On its own', role: 'isolated' };

/** Ways found over what floats, in the last law. */
let over = 0;

describe('a floating conductor', () => {
  it('should raise no grade when it is tied to a circuit', () => {
    check((file) => ['pri', 'out', 'aux'].flatMap((circuit) => tied(file, circuit)), raised);
  });

  it('should leave a path no longer than the way to it and the way on from it', () => {
    const apart = (file: File): File =>
      copyOf(file, (copy) => {
        copy.circuits.push(OWN);
        copy.core.bond = OWN.id;
      });
    check((file) => [apart(file)], longerThanOver);
    expect(over).toBeGreaterThan(0);
  });
});

/**
 * Of the circuit that it was tied to, which the title names: between two others it stands in the way as a third conductor.
 * A circuit of which nothing was drawn has no grade to keep: the core is the first of it.
 */
const raised: Complain = (before, after) =>
  after.pairs.flatMap((pair, i) => {
    const was = before.pairs[i]!;
    if (was.undrawn.length > 0 || !pair.between.includes(after.title)) return [];
    const isHigher = heightOf(pair.achieved) > heightOf(was.achieved);
    return isHigher ? [`${pair.between.join('-')} ${was.achieved} to ${pair.achieved}`] : [];
  });

/** The core tied to a circuit, and each floating screen. */
function tied(file: File, circuit: string): readonly File[] {
  const floating = file.layers.flatMap((layer: File, at: number) =>
    layer.kind === 'screen' && layer.circuit === undefined ? [at] : [],
  );
  const named = (change: (copy: File) => void): File =>
    copyOf(file, (copy) => {
      copy.title = circuit;
      change(copy);
    });
  return [
    named((copy) => (copy.core.bond = circuit)),
    ...floating.map((at: number) => named((copy) => (copy.layers[at].circuit = circuit))),
  ];
}

/** `before` with the core floating, `after` with it a circuit of its own. */
const longerThanOver: Complain = (before, after) =>
  before.pairs.flatMap((pair) => {
    const [a, b] = pair.between;
    const [there, on] = [pathsOf(after, a), pathsOf(after, b)];
    return pair.paths.flatMap(({ metric, plies, length }) =>
      there.flatMap((first) =>
        on.flatMap((second) => {
          const isSame = first.metric === metric && second.metric === metric;
          if (!isSame || first.plies + second.plies !== plies) return [];
          if (first.length === null || second.length === null) return [];
          over++;
          const most = first.length + second.length;
          const name = `${a}-${b} ${metric} ${plies} plies`;
          return (length ?? Infinity) > most + TOLERANCE ? [`${name}: ${length}, over the core ${most}`] : [];
        }),
      ),
    );
  });

const pathsOf = ({ pairs }: Verdict, circuit: string): PairVerdict['paths'] =>
  pairs.find(({ between }) => between.includes(OWN.id) && between.includes(circuit))?.paths ?? [];
