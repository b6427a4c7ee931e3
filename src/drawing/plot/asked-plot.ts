// What rule books ask of one pair, distance against voltage on two logarithmic axes: a line a book, each with its own dash
// so that they part in black and white, and the point of this build. Plain geometry in the units of the drawing.

export interface AskedLine {
  readonly name: string;
  /** V rms and mm; null: no figure, where the line breaks. */
  readonly points: readonly (readonly [number, number | null])[];
}

export interface AskedPlot {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly {
    readonly name: string;
    readonly path: string;
    readonly dash: string;
    readonly label: readonly [number, number];
  }[];
  readonly across: readonly { readonly y: number; readonly says: string }[];
  readonly along: readonly { readonly x: number; readonly says: string }[];
  readonly point: { readonly x: number; readonly y: number } | null;
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
}

const WIDTH = 620;
const HEIGHT = 360;
const BOX = { left: 40, right: 500, top: 14, bottom: 326 } as const;
const VOLTS = [50, 100, 160, 250, 400, 630, 1000] as const;
const MILLIMETRES = [0.5, 1, 2, 3, 4, 5, 8, 10, 15, 20, 30] as const;
const DASHES = ['', '7 3', '2 3', '10 3 2 3', '1 4', '5 2 1 2 1 2'] as const;
const LABEL_STEP = 14;

/** `at`: the build's own voltage and length; `own`: the book of its file, whose line is drawn through. */
export function askedPlot(
  lines: readonly AskedLine[],
  at: { readonly rms: number; readonly mm: number | null },
  own: string,
): AskedPlot {
  const all = lines.flatMap(({ points }) => points.flatMap(([, mm]) => (mm === null ? [] : [mm])));
  const low = Math.min(...all, at.mm !== null && at.mm > 0 ? at.mm : Infinity, 1) / 1.2;
  const high = Math.max(...all, at.mm ?? 0, 10) * 1.1;
  const scale = (value: number, from: number, to: number): number =>
    Math.log(value / from) / Math.log(to / from);
  const x = (rms: number): number => BOX.left + scale(rms, VOLTS[0], VOLTS[6]) * (BOX.right - BOX.left);
  const y = (mm: number): number => BOX.bottom - scale(mm, low, high) * (BOX.bottom - BOX.top);
  const inside = (mm: number | null): boolean => mm !== null && mm >= low && mm <= high;
  const ends = lines.map(({ points }) => points.findLast(([, mm]) => mm !== null));
  const dashOf = dashes(lines, own);
  const labels = apart(ends.map((end) => y(end?.[1] ?? low)));
  return {
    width: WIDTH,
    height: HEIGHT,
    box: BOX,
    lines: lines.map(({ name, points }, i) => ({
      name,
      path: pathOf(points, x, y),
      dash: dashOf(name),
      label: [BOX.right + 8, labels[i] ?? BOX.bottom],
    })),
    across: MILLIMETRES.filter(inside).map((mm) => ({ y: y(mm), says: String(mm) })),
    along: VOLTS.map((rms) => ({ x: x(rms), says: String(rms) })),
    point:
      at.mm === null || at.mm <= 0 || at.rms < VOLTS[0] || at.rms > VOLTS[6]
        ? null
        : { x: x(at.rms), y: y(at.mm) },
  };
}

/** The first is no dash. */
function dashes(lines: readonly AskedLine[], own: string): (name: string) => string {
  const order = [own, ...lines.map(({ name }) => name).filter((name) => name !== own)];
  return (name) => DASHES[order.indexOf(name) % DASHES.length] ?? '';
}

function pathOf(points: AskedLine['points'], x: (rms: number) => number, y: (mm: number) => number): string {
  let pen = 'M';
  return points
    .map(([rms, mm]) => {
      if (mm === null) {
        pen = 'M';
        return '';
      }
      const piece = `${pen}${x(rms).toFixed(1)} ${y(mm).toFixed(1)}`;
      pen = 'L';
      return piece;
    })
    .join('');
}

/** Heights of names that would stand on one another, moved apart, in the same order. */
function apart(heights: readonly number[]): readonly number[] {
  const order = heights.map((height, i) => ({ height, i })).sort((a, b) => b.height - a.height);
  const placed: number[] = [];
  let above = Infinity;
  for (const { height, i } of order) {
    const at = Math.min(height, above - LABEL_STEP);
    placed[i] = at;
    above = at;
  }
  return placed;
}
