// Marks written as SVG: hatches and stamps once as definitions, then one element a mark, in order.

import type { Hatch } from '#drawing/paper/hatches.ts';
import type { Fill, Mark, Point, StampMark, Stroke, WordsMark } from '#drawing/paper/mark.ts';
import { escapeText } from '#words/text/escape-text.ts';
import { element, px, type Attributes } from './svg-element.ts';

/** `prefix` stands before every id, so that several drawings may stand in one document. */
export function svgMarks(marks: readonly Mark[], prefix: string): string {
  const definitions = new Map<string, string>();
  const drawn = marks.map((mark) => svgMark(mark, prefix, definitions)).join('');
  const defs = definitions.size === 0 ? '' : element('defs', {}, [...definitions.values()].join(''));
  return defs + drawn;
}

function svgMark(mark: Mark, prefix: string, definitions: Map<string, string>): string {
  const opacity = mark.opacity === undefined || mark.opacity === 1 ? null : mark.opacity;
  const filled = (fill: Fill): Attributes => ({ fill: paint(fill, prefix, definitions), opacity });
  switch (mark.kind) {
    case 'area':
      return element('path', {
        d: mark.loops.map(closed).join(''),
        ...filled(mark.fill),
        ...lines(mark.stroke),
      });
    case 'line':
      return mark.runs.length === 0
        ? ''
        : element('path', { d: mark.runs.map(open).join(''), fill: 'none', opacity, ...lines(mark.stroke) });
    case 'circle': {
      const [cx, cy] = [mark.at[0] || null, mark.at[1] || null];
      return element('ellipse', {
        cx,
        cy,
        rx: mark.rx,
        ry: mark.ry,
        ...filled(mark.fill),
        ...lines(mark.stroke),
      });
    }
    case 'words':
      return words(mark, opacity);
    case 'chip': {
      const { at, width, height, fill, rim, dash } = mark;
      const box = { x: at[0] - width / 2, y: at[1] - height / 2, width, height, rx: 2.5 };
      const stroke = { color: rim, width: 1.3, ...(dash === undefined ? {} : { dash }) };
      return (
        element('rect', { ...box, fill, opacity, ...lines(stroke) }) +
        words({ ...mark, kind: 'words', bold: true }, opacity)
      );
    }
    case 'stamp':
      return stamped(mark, prefix, definitions);
  }
}

const closed = (loop: readonly Point[]): string => `${open(loop)}Z`;

const open = (run: readonly Point[]): string => `M${run.map(([x, y]) => `${px(x)} ${px(y)}`).join('L')}`;

const lines = (stroke: Stroke | null): Attributes =>
  stroke === null
    ? {}
    : {
        stroke: stroke.color,
        'stroke-width': stroke.width,
        'stroke-dasharray':
          stroke.dash === undefined || stroke.dash.length === 0 ? null : stroke.dash.map(px).join(' '),
      };

function words({ at, words: said, size, color, bold, align }: WordsMark, opacity: number | null): string {
  const anchor = { left: null, center: 'middle', right: 'end' }[align ?? 'center'];
  const look = {
    fill: color,
    'font-size': size,
    'font-weight': bold === true ? 700 : null,
    'text-anchor': anchor,
  };
  return element('text', { x: at[0], y: at[1] + size * 0.36, ...look, opacity }, escapeText(said) || ' ');
}

function stamped({ marks, at }: StampMark, prefix: string, definitions: Map<string, string>): string {
  const figure = marks.map((mark) => svgMark(mark, prefix, definitions)).join('');
  const id = defined(`stamp ${figure}`, `${prefix}turn`, definitions, (name) =>
    element('g', { id: name }, figure),
  );
  return at.map(([x, y]) => `<use href="#${id}" x="${px(x)}" y="${px(y)}"/>`).join('');
}

function paint(fill: Fill, prefix: string, definitions: Map<string, string>): string {
  if (fill === null) return 'none';
  if (typeof fill === 'string') return fill;
  const { key } = fill;
  return `url(#${defined(key, `${prefix}${key}`, definitions, (id) => pattern(fill, id))})`;
}

/** The id of a definition, made when it is first asked for. Stamps are counted, hatches have names of their own. */
function defined(
  key: string,
  name: string,
  definitions: Map<string, string>,
  make: (id: string) => string,
): string {
  const known = [...definitions.keys()].filter((each) => each.startsWith('stamp '));
  const isStamp = key.startsWith('stamp ');
  const place = known.indexOf(key);
  const id = isStamp ? `${name}${place < 0 ? known.length : place}` : name;
  if (!definitions.has(key)) definitions.set(key, make(id));
  return id;
}

function pattern(
  { side: [width, height], ground, color, strokes, width: thick, dots, isRing }: Hatch,
  id: string,
): string {
  const ends = strokes.map(([x0, y0, x1, y1]): readonly Point[] => [
    [x0, y0],
    [x1, y1],
  ]);
  const stroke = lines({ color, width: thick });
  const drawn = [
    element('rect', { width, height, fill: ground }),
    ends.length === 0 ? '' : element('path', { d: ends.map(open).join(''), fill: 'none', ...stroke }),
    ...dots.map(([cx, cy, r]) =>
      element('circle', { cx, cy, r, ...(isRing ? { fill: 'none', ...stroke } : { fill: color }) }),
    ),
  ];
  return element('pattern', { id, width, height, patternUnits: 'userSpaceOnUse' }, drawn.join(''));
}
