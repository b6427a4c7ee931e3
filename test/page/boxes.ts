// The boxes of all that one reads or takes hold of on the drawing and in the line of the verdict: words, chips, flags, grips,
// as they stand on the page. The canvas library keeps its stages where a test can find them.

import type { Page } from 'playwright';

export interface BoxOf {
  readonly what: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Node {
  readonly getAttr: (name: string) => unknown;
  readonly getAbsolutePosition: () => { readonly x: number; readonly y: number };
  readonly isVisible: () => boolean;
}

interface MarkLike {
  readonly kind: string;
  readonly role: string;
  readonly words?: string;
  readonly at?: readonly [number, number];
  readonly size?: number;
  readonly bold?: boolean;
  readonly align?: string;
  readonly width?: number;
  readonly height?: number;
  readonly loops?: readonly (readonly (readonly [number, number])[])[];
}

export const boxesOf = (page: Page): Promise<readonly BoxOf[]> =>
  page.evaluate(() => {
    const konva = (globalThis as unknown as { Konva: { stages: { find: (what: string) => Node[] }[] } })
      .Konva;
    const stage = konva.stages[0]!;
    const { left: x0, top: y0 } = document.querySelector('.stage')!.getBoundingClientRect();
    const ink = document.createElement('canvas').getContext('2d')!;
    const boxOf = (mark: MarkLike): BoxOf[] => {
      const [x, y] = mark.at ?? [0, 0];
      const round = (what: string, width: number, height: number, middle = x): BoxOf[] => [
        {
          what,
          left: x0 + middle - width / 2,
          right: x0 + middle + width / 2,
          top: y0 + y - height / 2,
          bottom: y0 + y + height / 2,
        },
      ];
      if (mark.kind === 'chip') return round(`chip ${mark.words}`, mark.width!, mark.height!);
      // numbers in flags and plies are part of what they stand on
      if (mark.kind === 'words' && mark.role !== 'spots' && mark.role !== 'path') {
        const family = getComputedStyle(document.body).fontFamily;
        ink.font = `${mark.bold === true ? 700 : 400} ${mark.size}px ${family}`;
        const width = ink.measureText(mark.words!).width * 0.95;
        const middle = mark.align === 'left' ? x + width / 2 : mark.align === 'right' ? x - width / 2 : x;
        return round(`words ${mark.words}`, width, mark.size! * 0.9, middle);
      }
      if (mark.kind === 'area' && mark.role === 'spots') {
        const corners = mark.loops!.flat();
        const [xs, ys] = [corners.map(([a]) => a), corners.map(([, b]) => b)];
        const [left, right] = [Math.min(...xs), Math.max(...xs)];
        return [
          {
            what: 'flag',
            left: x0 + left,
            right: x0 + right,
            top: y0 + Math.min(...ys),
            bottom: y0 + Math.max(...ys),
          },
        ];
      }
      return [];
    };
    const shapes = stage.find('Shape').filter((node) => node.isVisible());
    const marks = shapes.flatMap((node) => (node.getAttr('marks') as MarkLike[] | undefined) ?? []);
    const grips = shapes.flatMap((node): BoxOf[] => {
      const look = node.getAttr('look');
      if (look === undefined || look === 'none') return [];
      const { x, y } = node.getAbsolutePosition();
      return [
        {
          what: `grip ${String(node.getAttr('id'))}`,
          left: x0 + x - 3,
          right: x0 + x + 3,
          top: y0 + y - 3,
          bottom: y0 + y + 3,
        },
      ];
    });
    const line = [...document.querySelectorAll('.verdict > *')].flatMap((element): BoxOf[] => {
      const { left, top, right, bottom, width, height } = element.getBoundingClientRect();
      const what = `line ${element.className || element.tagName}`;
      return width * height === 0 || element.classList.contains('hidden-text')
        ? []
        : [{ what, left, top, right, bottom }];
    });
    return [...marks.flatMap(boxOf), ...grips, ...line];
  });

/** Pairs that cover more than a pixel of each other. */
export function overlapsOf(boxes: readonly BoxOf[]): readonly string[] {
  return boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const up = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      return across > 1 && up > 1 ? [`${a.what} | ${b.what}`] : [];
    }),
  );
}
