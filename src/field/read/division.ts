// How the voltage divides along a straight way from metal to metal: through a point, in the direction of the field line
// there. One part for each body passed; `AIR` for what no body fills. Millimetres and volts.

import { AIR } from '#field/mesh/body-map.ts';
import type { FieldView } from './field-view.ts';

export interface Part {
  readonly body: number;
  readonly length: number;
  readonly volts: number;
}

/** No body thinner than this is seen, mm. */
const STEP = 0.001;
const MOST_STEPS = 6000;
const HALVINGS = 12;

/** Empty where one of the two ways meets no metal. */
export function divisionAt(
  view: FieldView,
  [x, y]: readonly [number, number],
  [dx, dy]: readonly [number, number],
): readonly Part[] {
  const size = Math.hypot(dx, dy);
  if (size === 0) return [];
  const { map } = view.field;
  const place = (s: number) => [x + (s * dx) / size, y + (s * dy) / size] as const;
  const codeAt = (s: number) => map.at(...place(s));
  const [back, ahead] = [cuts(codeAt, -1), cuts(codeAt, 1)];
  if (back === null || ahead === null) return [];
  const all = [...back.toReversed(), ...ahead];
  const voltsAt = (s: number, inward: number) => view.at(...place(s + inward))?.volts ?? 0;
  const hair = STEP / 2 ** HALVINGS;
  return all.slice(1).map((to, i): Part => {
    const from = all[i]!;
    const code = codeAt((from + to) / 2);
    // a hair outside the metal at either end, so that the field is asked and not the electrode
    const volts = Math.abs(voltsAt(to, -hair) - voltsAt(from, hair));
    return { body: code === AIR ? AIR : code >> 1, length: to - from, volts };
  });
}

const isMetal = (code: number): boolean => code !== AIR && code % 2 === 1;

/** Where the body changes on the way from 0, to the first metal; null where there is none. */
function cuts(codeAt: (s: number) => number, way: 1 | -1): readonly number[] | null {
  const found: number[] = [];
  let code = codeAt(0);
  for (let i = 0; i < MOST_STEPS; i++) {
    const next = codeAt(way * (i + 1) * STEP);
    if (next === code) continue;
    found.push(halved(codeAt, way * i * STEP, way * (i + 1) * STEP));
    if (isMetal(next)) return found;
    code = next;
  }
  return null;
}

function halved(codeAt: (s: number) => number, from: number, to: number): number {
  const code = codeAt(from);
  let [a, b] = [from, to];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (a + b) / 2;
    if (codeAt(middle) === code) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
