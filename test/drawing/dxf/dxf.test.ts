import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { dxfOf } from '#drawing/dxf/dxf.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { greenhouse, greenhouseDesign } from '#test/papers/greenhouse.ts';

const scene = sceneOf(greenhouseDesign(), greenhouse, 'plain');
if (scene === null) throw new Error('the fixture has a plain section');
const lines = dxfOf(scene).trimEnd().split('\r\n');
const pairs = lines.flatMap((line, k) => (k % 2 === 0 ? [[Number(line), lines[k + 1] ?? ''] as const] : []));
const count = (name: string) => pairs.filter(([code, value]) => code === 0 && value === name).length;

/** As the reader gives it, as far as it is looked at here. */
interface Read {
  readonly header: Readonly<Record<string, unknown>>;
  readonly entities: readonly {
    readonly type: string;
    readonly layer: string;
    readonly radius?: number;
    readonly text?: string;
    readonly vertices?: readonly { readonly x: number; readonly y: number }[];
  }[];
}

function read(text: string): Read {
  const drawing = new DxfParser().parseSync(text);
  if (drawing === null) throw new Error('the reader found no drawing');
  return drawing as unknown as Read;
}

describe('dxfOf', () => {
  it('should be pairs of a whole code and a value, ended as the format says', () => {
    expect(lines.length % 2).toBe(0);
    for (const [code] of pairs) expect(Number.isInteger(code)).toBe(true);
    expect(pairs.at(-1)).toEqual([0, 'EOF']);
    expect(count('SECTION')).toBe(count('ENDSEC'));
    expect(count('POLYLINE')).toBe(count('SEQEND'));
  });

  it('should open in a general-purpose reader as a drawing in millimetres', () => {
    const drawing = read(dxfOf(scene));
    expect(drawing.header.$INSUNITS).toBe(4);
    expect(drawing.header.$EXTMAX).toMatchObject({ x: scene.frame.x1, y: scene.frame.y1 });
    const former = drawing.entities.filter(({ layer, type }) => layer === 'FORMER' && type === 'POLYLINE');
    const xs = former.flatMap(({ vertices = [] }) => vertices.map(({ x }) => x));
    // 0.80 mm of flange on either side of 12 mm
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([-0.8, 12.8]);
  });

  it('should hold each turn at the overall and the conductor diameter of its wire', () => {
    const { entities } = read(dxfOf(scene));
    const radii = (layer: string) =>
      entities.flatMap((each) => (each.type === 'CIRCLE' && each.layer === layer ? [each.radius] : []));
    // 20 turns, 0.65 mm over the enamel; the conductor as the tables of wires have it
    const conductor = scene.turns.find(({ circuit }) => circuit === 'out')?.conductor ?? NaN;
    expect(radii('TURNS_OUT')).toEqual(Array.from({ length: 20 }, () => 0.325));
    expect(radii('CONDUCTORS_OUT')).toEqual(Array.from({ length: 20 }, () => conductor / 2));
  });

  it('should hold every figure and every leg of the path', () => {
    const { entities } = read(dxfOf(scene));
    const onPath = entities.filter(({ layer, type }) => layer === 'PATH' && type === 'POLYLINE');
    expect(onPath.length).toBeGreaterThanOrEqual(scene.path?.legs.length ?? Infinity);
    const plies = scene.areas.filter(({ kind }) => kind === 'ply');
    expect(entities.filter(({ layer }) => layer === 'PLY')).toHaveLength(plies.length);
    const words = entities.flatMap(({ type, text }) => (type === 'TEXT' ? [text] : []));
    expect(words).toContain('4.83 of 5.6 mm');
  });

  it('should be in millimetres, without exponents', () => {
    const lengths = pairs.filter(([code]) => [10, 20, 40].includes(code)).map(([, value]) => value);
    for (const value of lengths) expect(value).toMatch(/^-?\d+\.\d{6}$/);
    expect(lengths).toContain('12.000000');
  });

  it('should name layers and texts in signs that every reader knows', () => {
    for (const [code, value] of pairs.filter(([each]) => each === 8))
      expect([code, value]).toEqual([8, expect.stringMatching(/^[A-Z0-9_]{1,31}$/)]);
    for (const line of lines) expect(line).toMatch(/^[\x20-\x7e]*$/);
  });
});
