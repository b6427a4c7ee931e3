// The plot of a table as SVG. What falls short is a filled square with the missing piece drawn up to what is asked, what is
// not shown a broken rhomb, what meets a hollow circle, so that all of it holds in black and white.

import { inMillimetres } from '#words/text/length-unit.ts';
import type { PlottedLine, PlottedPoint, TablePlot } from '#drawing/plot/table-plot.ts';
import { escapeText } from '#words/text/escape-text.ts';
import { lengthDown, lengthUp, plain } from '#words/text/number-words.ts';
import { element } from './svg-element.ts';

/** Colours as CSS knows them, so that a page may pass its own variables. */
export interface PlotInks {
  readonly ink: string;
  readonly second: string;
  readonly hair: string;
  readonly sheet: string;
  readonly pencil: string;
}

export const PRINT_INKS: PlotInks = {
  ink: '#000000',
  second: '#333333',
  hair: '#cccccc',
  sheet: '#ffffff',
  pencil: '#000000',
};

export interface PlotWords {
  readonly title: string;
  /** Of the axis along, with its unit. */
  readonly along: string;
  readonly nameOf: (point: PlottedPoint) => string;
}

/** In millimetres, as the tables are. */
export const svgTablePlot = (plot: TablePlot, words: PlotWords, inks: PlotInks): string =>
  inMillimetres(() => drawn(plot, words, inks));

function drawn(plot: TablePlot, words: PlotWords, inks: PlotInks): string {
  const { width, height, box } = plot;
  const ground = element('rect', { width, height, fill: inks.sheet });
  const parts = [
    element('title', {}, escapeText(words.title)),
    ground,
    ...plot.across.map(
      ({ place, says }) =>
        line(`M${box.left} ${place}H${box.right}`, inks.hair, 1) +
        text(box.left - 6, place + 3.5, says, inks.second, 'end'),
    ),
    ...plot.along.map(
      ({ place, says }) =>
        line(`M${place} ${box.top}V${box.bottom}`, inks.hair, 1) +
        text(place, box.bottom + 15, says, inks.second, 'middle'),
    ),
    text(box.left, box.top - 6, 'mm', inks.second),
    text(box.right, box.bottom + 31, words.along, inks.second, 'end'),
    ...plot.lines.map((each) => lineOf(each, inks)),
    crossOf(plot, inks),
    ...plot.points.map((each) => pointOf(each, words.nameOf(each), inks)),
  ];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': words.title,
      'font-family': 'sans-serif',
      'font-size': 11,
    },
    parts.join(''),
  );
}

const line = (d: string, stroke: string, width: number, dash = ''): string =>
  element('path', {
    d,
    fill: 'none',
    stroke,
    'stroke-width': width,
    'stroke-dasharray': dash || null,
  });

const text = (x: number, y: number, says: string, fill: string, anchor = 'start', bold = false): string =>
  element(
    'text',
    { x, y, 'text-anchor': anchor, fill, 'font-weight': bold ? 'bold' : null },
    escapeText(says),
  );

const WIDTHS: Readonly<Record<PlottedLine['rank'], number>> = { first: 2.4, chosen: 1.6, other: 1.2 };

function lineOf({ name, rank, path, dots, dash, label: [x, y] }: PlottedLine, inks: PlotInks): string {
  const marks = dots.map(([cx, cy]) =>
    element('circle', {
      cx,
      cy,
      r: 2.6,
      fill: rank === 'first' ? inks.ink : inks.sheet,
      stroke: inks.ink,
    }),
  );
  return (
    line(path, inks.ink, WIDTHS[rank], dash) +
    marks.join('') +
    line(`M${x - 6} ${y}h18`, inks.ink, WIDTHS[rank], dash) +
    text(x + 16, y + 3.5, name, rank === 'other' ? inks.second : inks.ink, 'start', rank === 'first')
  );
}

function crossOf({ cross, box }: TablePlot, inks: PlotInks): string {
  if (cross === null) return '';
  const { x, y, at, mm } = cross;
  return (
    line(`M${x} ${box.bottom}V${y}H${box.left}`, inks.second, 1, '8 3 2 3') +
    chip(x, box.bottom + 11, plain(at), inks) +
    chip(box.left - 18, y, lengthUp(mm), inks)
  );
}

function chip(x: number, y: number, says: string, inks: PlotInks): string {
  const width = 10 + 6.4 * says.length;
  return (
    element('rect', {
      x: x - width / 2,
      y: y - 8,
      width,
      height: 16,
      rx: 2,
      fill: inks.sheet,
      stroke: inks.ink,
    }) + text(x, y + 4, says, inks.ink, 'middle', true)
  );
}

/** In the plot the shape with its letter; in the key both again, with the words. */
function pointOf(point: PlottedPoint, name: string, inks: PlotInks): string {
  const { x, y, verdict, built, missingTo, letter, key } = point;
  const colour = verdict === 'falls-short' ? inks.pencil : inks.ink;
  const missing = missingTo === null ? '' : line(`M${x} ${y}V${missingTo}`, colour, 2, '3 2.5');
  const says = `${letter} ${name}, ${lengthDown(built ?? 0)} mm${overWords(point)}`;
  return (
    missing +
    shapeOf(verdict, x, y, colour, inks.sheet) +
    text(x + 9, y + 14, letter, colour, 'start', true) +
    shapeOf(verdict, key[0], key[1], colour, inks.sheet) +
    text(key[0] + 14, key[1] + 4, says, colour, 'start', true)
  );
}

function shapeOf(
  verdict: PlottedPoint['verdict'],
  x: number,
  y: number,
  colour: string,
  sheet: string,
): string {
  switch (verdict) {
    case 'falls-short':
      return element('rect', { x: x - 5, y: y - 5, width: 10, height: 10, fill: colour });
    case 'not-shown':
      return element('path', {
        d: `M${x - 7} ${y}L${x} ${y - 7}L${x + 7} ${y}L${x} ${y + 7}Z`,
        fill: sheet,
        stroke: colour,
        'stroke-width': 1.6,
        'stroke-dasharray': '2.5 2',
      });
    case 'meets':
      return element('circle', { cx: x, cy: y, r: 5.5, fill: sheet, stroke: colour, 'stroke-width': 1.8 });
  }
}

/** A pair may meet by its solids where the way round them is shorter than what is asked. */
function overWords({ verdict, built, asked }: PlottedPoint): string {
  if (built === null || asked === null) return '';
  if (built >= asked) return `: ${lengthDown(built - asked)} more`;
  return verdict === 'meets' ? ': meets by its solids' : `: ${lengthUp(asked - built)} short`;
}
