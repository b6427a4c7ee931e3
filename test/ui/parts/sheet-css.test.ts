import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { palette } from '#drawing/scene/palette.ts';

const css = readFileSync('src/ui/parts/sheet.css', 'utf8');

/** The pair of colours of a custom property, as the sheet gives them. */
const pairOf = (name: string): readonly string[] =>
  new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\);`).exec(css)?.slice(1) ?? [];

describe('sheet.css', () => {
  const { light, dark } = palette;

  it('should ground the page in the colours of the drawing', () => {
    const names = {
      sheet: 'sheet',
      row: 'raised',
      desk: 'desk',
      ink: 'ink',
      'ink-second': 'second',
      'ink-third': 'third',
      line: 'line',
      hair: 'hair',
      pencil: 'pencil',
    } as const;
    for (const [name, role] of Object.entries(names))
      expect(pairOf(name), name).toEqual([light[role], dark[role]]);
  });

  it('should give each circuit the hue that it has on the drawing', () => {
    for (const [name, hue] of Object.entries(light.circuits)) {
      const darkHue = dark.circuits[name as keyof typeof dark.circuits];
      expect(pairOf(name), name).toEqual([hue.ring, darkHue.ring]);
      if (hue.fill !== light.sheet) expect(pairOf(`${name}-fill`), name).toEqual([hue.fill, darkHue.fill]);
    }
  });

  it('should hatch materials as on the drawing', () => {
    const { core, former, ply } = light.materials;
    const inDark = dark.materials;
    expect(pairOf('core-ground')).toEqual([core.fill, inDark.core.fill]);
    expect(pairOf('core-hatch')).toEqual([core.hatch, inDark.core.hatch]);
    expect(pairOf('former-ground')).toEqual([former.fill, inDark.former.fill]);
    expect(pairOf('former-hatch')).toEqual([former.hatch, inDark.former.hatch]);
    expect(pairOf('tape')).toEqual([ply.fill, inDark.ply.fill]);
    expect(pairOf('tape-joint')).toEqual([ply.rim, inDark.ply.rim]);
  });
});
