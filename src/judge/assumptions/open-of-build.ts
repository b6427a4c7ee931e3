// What nobody said of the build as a whole, and what it counts as: how a temperature was read, what a part across the
// barrier passes.

import { plainly, type PlainlyCounted } from '#judge/verdict/assumed.ts';
import type { Design } from '#model/design.ts';
import type { Heat } from '#stress/heat/heat.ts';
import type { Assumption, JudgedTouchCurrent } from '#judge/verdict/verdict.ts';

export function openOfBuild(
  design: Design,
  heat: Heat,
  touch: JudgedTouchCurrent | null,
): readonly Assumption[] {
  return [...openMethod(heat), ...openValues(design, touch)];
}

function openMethod({ hottest, plusMinus, limits }: Heat): readonly Assumption[] {
  if (hottest === null || limits === null || !limits.methodOpen) return [];
  const isHot = hottest + plusMinus > limits.worst.value;
  const decides = isHot && hottest <= limits.best.value && !limits.classOpen;
  return [open('surroundings.temperature.method', 'thermocouple', decides)];
}

function openValues({ bridges }: Design, touch: JudgedTouchCurrent | null): readonly Assumption[] {
  if (touch === null) return [];
  const decides = touch.verdict === 'not-shown' && touch.rms <= touch.limit;
  return bridges.flatMap(({ id, kind }, i) =>
    touch.missing.includes(id)
      ? [
          open(
            `bridges[${i}].${kind === 'resistor' ? 'resistance' : 'capacitance'}`,
            'current-not-shown',
            decides,
          ),
        ]
      : [],
  );
}

const open = (field: string, counted: PlainlyCounted, decides: boolean): Assumption => ({
  field,
  between: null,
  counted: plainly(counted),
  decides,
  atBest: null,
  figure: null,
  kind: 'unknown',
});
