import { describe, expect, it } from 'vitest';
import { pathFigure, pathFigurePlace } from '#drawing/path/path-figure.ts';
import type { Plate } from '#drawing/scene/view.ts';
import type { Scene, PathScale } from '#drawing/scene/scene.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { greenhouseDesign, greenhouse } from '#test/papers/greenhouse.ts';

const scene = sceneOf(greenhouseDesign(), greenhouse, 'plain') as Scene;
const path = scene.path as PathScale;
const toX = (mm: number): number => 100 + 50 * mm;
const toY = (mm: number): number => 400 - 50 * mm;
const room = { left: 0, top: 0, right: 800, bottom: 450 };
const size = { width: 100, height: 20 };
const placed = (kept: readonly Plate[] = [], within = room) =>
  pathFigurePlace(path, scene, { toX, toY, room: within, kept }, size);

const plateAt = ([x, y]: readonly [number, number]): Plate => ({
  left: x - 50,
  right: x + 50,
  top: y - 10,
  bottom: y + 10,
});
const overlap = (a: Plate, b: Plate): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

describe('figure of a path', () => {
  it('should say the length, what is asked, and what is crossed', () => {
    expect(pathFigure(path)).toBe('4.83 of 5.6 mm');
    const wall = {
      ...path.legs[0]!,
      kind: 'through',
      length: 0,
      plies: 1,
      course: { by: 'through', what: 'sleeve' },
    } as const;
    const plies = { ...wall, plies: 2, course: { by: 'through', what: 'plies' } } as const;
    expect(pathFigure({ ...path, legs: [...path.legs, wall, plies] })).toBe(
      '4.83 of 5.6 mm, through 2 plies and the sleeve',
    );
  });

  it('should hide neither copper nor the path where there is room beside them', () => {
    const plate = plateAt(placed());
    const copper = scene.areas.filter(({ circuit }) => circuit !== null);
    expect(copper.length).toBeGreaterThan(0);
    for (const { bounds } of copper) {
      const box = {
        left: toX(bounds.x0),
        right: toX(bounds.x1),
        top: toY(bounds.y1),
        bottom: toY(bounds.y0),
      };
      expect(overlap(plate, box)).toBe(false);
    }
    for (const { from, to } of path.legs) {
      const xs = [toX(from[0]), toX(to[0])];
      const ys = [toY(from[1]), toY(to[1])];
      const leg = {
        left: Math.min(...xs),
        right: Math.max(...xs),
        top: Math.min(...ys),
        bottom: Math.max(...ys),
      };
      expect(overlap(plate, leg)).toBe(false);
    }
  });

  it('should give way to a flag, and keep within the room', () => {
    const flag = plateAt(placed());
    expect(overlap(plateAt(placed([flag])), flag)).toBe(false);
    const narrow = { left: 100, top: 300, right: 260, bottom: 400 };
    const { left, right, top, bottom } = plateAt(placed([], narrow));
    expect([left >= 100, right <= 260, top >= 300, bottom <= 400]).toEqual([true, true, true, true]);
  });
});
