// A section with a gauge of volts beside it: each layer of turns has a bar at its own height from its lowest to its highest
// potential, tied to it by a dotted thread. Without bars the section stands alone. Volts as given; nothing is judged here.

import { palette, type ThemeName } from '#drawing/scene/palette.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { guessedWidth, place, scaleUp, type Paper } from '#drawing/paper/paper.ts';
import { line } from '#drawing/paper/shapes.ts';
import type { Mark, Point } from '#drawing/paper/mark.ts';
import { ALL_STRONG } from '#drawing/marks/path-marks.ts';
import { notePlates } from '#drawing/marks/note-marks.ts';
import { groundMarks, pathAndFlagMarks } from '#drawing/marks/section-marks.ts';
import { svgMarks } from '#drawing/svg/svg-marks.ts';
import { element } from '#drawing/svg/svg-element.ts';
import { svgPage } from '#drawing/svg/svg.ts';
import { escapeText } from '#words/text/escape-text.ts';

export interface VoltBar {
  readonly layer: number;
  readonly circuit: string;
  readonly low: number;
  readonly high: number;
}

interface GaugeOptions {
  readonly theme: ThemeName;
  /** Pixels across, the gauge included. */
  readonly width: number;
  readonly prefix: string;
  /** Name for those who cannot see it. */
  readonly says: string;
}

const EDGE = 3;
const TOP = 40;
const BAR = 7;
const WORDS = 11;
/** Of the whole width. */
const GAUGE_SHARE = 0.36;
const STEPS = [10, 20, 50, 100, 200, 500, 1000, 2000];

export function voltGauge(scene: Scene, bars: readonly VoltBar[], options: GaugeOptions): string {
  const { frame } = scene;
  const { width, theme, prefix, says } = options;
  const across = bars.length === 0 ? width : width * (1 - GAUGE_SHARE);
  const top = bars.length === 0 ? EDGE : TOP;
  const scale = (across - 2 * EDGE) / (frame.x1 - frame.x0);
  const height = Math.ceil(top + (frame.y1 - frame.y0) * scale + EDGE);
  const paper: Paper = {
    theme: palette[theme],
    view: { scale, stretch: 1, left: EDGE - frame.x0 * scale, base: top + frame.y1 * scale },
    bounds: { left: 0, top: 0, right: across, bottom: height },
    room: { left: 0, top, right: across, bottom: height },
    density: null,
    measure: guessedWidth,
  };
  const shown = { told: ALL_STRONG, picked: null, kept: notePlates(scene, paper) };
  const marks = [
    ...groundMarks(scene, paper, true),
    ...pathAndFlagMarks(scene, paper, [], shown),
    ...gaugeMarks(scene, bars, paper, { left: across + 24, right: width - 24, bottom: height - EDGE }),
  ];
  return svgPage(
    { width, height, viewBox: `0 0 ${width} ${height}` },
    element('title', {}, escapeText(says)) +
      element('rect', { width, height, fill: paper.theme.sheet }) +
      svgMarks(marks, prefix),
  );
}

interface Gauge {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
}

function gaugeMarks(scene: Scene, bars: readonly VoltBar[], paper: Paper, gauge: Gauge): readonly Mark[] {
  if (bars.length === 0) return [];
  const [low, high] = [
    Math.min(0, ...bars.map((bar) => bar.low)),
    Math.max(0, ...bars.map((bar) => bar.high)),
  ];
  const step = STEPS.find((each) => (high - low) / each <= 5) ?? STEPS.at(-1)!;
  const [from, to] = [Math.floor(low / step), Math.max(Math.ceil(high / step), Math.floor(low / step) + 1)];
  const x = (volts: number): number =>
    gauge.left + ((volts / step - from) / (to - from)) * (gauge.right - gauge.left);
  return [
    ...scaleMarks(from, to, step, x, gauge, paper),
    ...bars.flatMap((bar) => barMarks(bar, x, scene, paper)),
  ];
}

function scaleMarks(
  from: number,
  to: number,
  step: number,
  x: (volts: number) => number,
  { bottom }: Gauge,
  { theme }: Paper,
): readonly Mark[] {
  return Array.from({ length: to - from + 1 }, (_, i) => (from + i) * step).flatMap(
    (volts): readonly Mark[] => {
      const at = x(volts);
      const look = { color: volts === 0 ? theme.ink : theme.line, width: volts === 0 ? 1.6 : 0.8 };
      const words = `${volts < 0 ? '−' : ''}${Math.abs(volts)}${volts === to * step ? ' V' : ''}`;
      return [
        line('gauge', [at, TOP - 10], [at, bottom], look),
        { kind: 'words', role: 'gauge', at: [at, TOP - 20], words, size: WORDS, color: theme.second },
      ];
    },
  );
}

function barMarks(
  { layer, circuit, low, high }: VoltBar,
  x: (volts: number) => number,
  scene: Scene,
  paper: Paper,
): readonly Mark[] {
  const lies = scene.layers.find((each) => each.layer === layer);
  const hue = scene.looks.find((each) => each.circuit === circuit)?.hue;
  if (lies === undefined || hue === undefined) return [];
  const { fill, ring } = paper.theme.circuits[hue];
  const [end, y] = place(paper, [lies.x1, (lies.y0 + lies.y1) / 2]);
  const [a, b] = [x(low), Math.max(x(high), x(low) + 2)];
  const half = Math.min(BAR, Math.max(3, (lies.y1 - lies.y0) * scaleUp(paper))) / 2;
  const loop: readonly Point[] = [
    [a, y - half],
    [b, y - half],
    [b, y + half],
    [a, y + half],
  ];
  return [
    line('gauge', [end, y], [a, y], { color: paper.theme.second, width: 0.9, dash: [1.5, 3] }),
    { kind: 'area', role: 'gauge', loops: [loop], fill, stroke: { color: ring, width: 1.2 } },
  ];
}
