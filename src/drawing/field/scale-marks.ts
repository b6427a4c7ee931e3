// The scale of field strength at the upper right: its steps side by side, numbers in kV/mm under some of them.

import type { Mark } from '#drawing/paper/mark.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import { rampColor, strengthAt, STEPS } from './ramp.ts';

export const SCALE = { width: 260, height: 10, top: 4, left: 6, right: 44 } as const;

export function scaleMarks(theme: Theme, strongest: number, width: number): readonly Mark[] {
  const across = Math.min(SCALE.width, width - SCALE.right - SCALE.left, Math.max(120, width * 0.5));
  const [left, each] = [width - SCALE.right - across, across / STEPS];
  const cells = Array.from({ length: STEPS }, (_, i): Mark => {
    const [a, b] = [left + i * each, left + (i + 1) * each];
    const corners = [
      [a, SCALE.top],
      [b, SCALE.top],
      [b, SCALE.top + SCALE.height],
      [a, SCALE.top + SCALE.height],
    ] as const;
    return { kind: 'area', role: 'scale', loops: [corners], fill: rampColor(theme.name, i), stroke: null };
  });
  const numbers = [0, 4, 7, 10, STEPS].map((i): Mark => {
    const words = `${Number((strengthAt(i, strongest) / 1000).toPrecision(2))}`;
    const at = [left + i * each, SCALE.top + SCALE.height + 8] as const;
    return { kind: 'words', role: 'scale', at, words, size: 10, color: theme.second };
  });
  const unit: Mark = {
    kind: 'words',
    role: 'scale',
    at: [left + across + 6, SCALE.top + SCALE.height / 2],
    words: 'kV/mm',
    size: 10,
    color: theme.second,
    align: 'left',
  };
  return [...cells, ...numbers, unit];
}
