import { describe, expect, it } from 'vitest';
import { pictureHeader } from '#state/photo/photo-header.ts';

const text = (signs: string): readonly number[] => [...signs].map((sign) => sign.charCodeAt(0));
const big = (value: number, bytes: number): readonly number[] =>
  Array.from({ length: bytes }, (_, i) => (value >>> (8 * (bytes - 1 - i))) & 0xff);
const little = (value: number, bytes: number): readonly number[] => big(value, bytes).toReversed();
const zeros = (count: number): readonly number[] => Array.from({ length: count }, () => 0);
const read = (...parts: readonly (readonly number[])[]) => pictureHeader(Uint8Array.from(parts.flat()));

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const picture = (type: string) => ({ kind: 'picture', type: `image/${type}`, width: 10000, height: 10001 });

describe('picture header', () => {
  it('should read the size of a PNG', () => {
    expect(read(PNG, big(13, 4), text('IHDR'), big(10000, 4), big(10001, 4), zeros(5))).toEqual(
      picture('png'),
    );
  });

  it('should walk over a JPEG’s other segments to its frame, progressive or not', () => {
    for (const frame of [0xc0, 0xc2])
      expect(
        read(
          [0xff, 0xd8],
          [0xff, 0xe1, 0, 8, 1, 2, 3, 4, 5, 6],
          [0xff, 0xc4, 0, 4, 1, 2],
          [0xff, 0xff, frame, 0, 17, 8],
          big(10001, 2),
          big(10000, 2),
          zeros(12),
        ),
      ).toEqual(picture('jpeg'));
  });

  it('should read the three kinds of WebP', () => {
    const riff = [...text('RIFF'), ...zeros(4), ...text('WEBP')];
    const lossless = (10000 - 1) | ((10001 - 1) << 14);
    expect(read(riff, text('VP8X'), zeros(8), little(9999, 3), little(10000, 3), zeros(9))).toEqual(
      picture('webp'),
    );
    expect(read(riff, text('VP8L'), zeros(4), [0x2f], little(lossless, 4), zeros(9))).toEqual(
      picture('webp'),
    );
    expect(
      read(riff, text('VP8 '), zeros(7), [0x9d, 1, 0x2a], little(10000, 2), little(10001, 2), zeros(9)),
    ).toEqual(picture('webp'));
  });

  it('should tell damage from what is no picture', () => {
    expect(read(PNG, zeros(4)).kind).toBe('damaged');
    expect(read(PNG, big(13, 4), text('IHDR'), zeros(13)).kind).toBe('damaged');
    expect(read([0xff, 0xd8, 0xff], zeros(30)).kind).toBe('damaged');
    expect(read([0xff, 0xd8, 0xff, 0xda], zeros(30)).kind).toBe('damaged');
    expect(read(text('{"format":"layerwright-design/1"}')).kind).toBe('no-picture');
    expect(read(text('<svg xmlns="http://www.w3.org/2000/svg"/>')).kind).toBe('no-picture');
    expect(read([]).kind).toBe('no-picture');
  });
});
