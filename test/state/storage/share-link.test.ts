import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { readFragment, SHARE_PREFIX, shareFragment } from '#state/storage/share-link.ts';

describe('share link', () => {
  it('should carry a build of thirty layers there and back', async () => {
    const layers = Array.from({ length: 30 }, (_, i) => firstBuild.layers[i % firstBuild.layers.length]);
    const doc = { ...firstBuild, layers } as typeof firstBuild;
    const fragment = await shareFragment(doc);
    expect(fragment.length).toBeLessThan(2500);
    expect(fragment).toMatch(/^build=[A-Za-z0-9_-]+$/);
    expect(await readFragment(fragment)).toEqual({ kind: 'build', doc });
  });

  it('should carry a build with a wrong entry too', async () => {
    const doc = { ...firstBuild, former: { ...firstBuild.former, height: '3 kg' } };
    expect(await readFragment(await shareFragment(doc))).toMatchObject({ kind: 'faulty', json: doc });
  });

  it('should say that a damaged link is damaged', async () => {
    const fragment = await shareFragment(firstBuild);
    for (const damaged of [
      fragment.slice(0, -20),
      `${SHARE_PREFIX}`,
      `${SHARE_PREFIX}%%%`,
      `${SHARE_PREFIX}abcd`,
    ])
      expect(await readFragment(damaged)).toMatchObject({
        kind: 'refused',
        says: expect.stringContaining('damaged'),
      });
  });

  it('should not unpack more than a design file may hold', async () => {
    const swollen = { ...firstBuild, notes: ' '.repeat(5_000_000) };
    const fragment = await shareFragment(swollen);
    expect(fragment.length).toBeLessThan(20_000);
    expect(await readFragment(fragment)).toMatchObject({ says: expect.stringContaining('swells') });
  });

  it('should refuse what is no build', async () => {
    for (const odd of [{ a: 1 }, [], 'text', { ...firstBuild, format: 'another/1' }])
      expect(await readFragment(await shareFragment(odd as unknown as typeof firstBuild))).toMatchObject({
        kind: 'refused',
      });
  });

  it('should refuse fields that reach into prototypes', async () => {
    const hostile = JSON.parse(`{"__proto__": {"polluted": true}, ${JSON.stringify(firstBuild).slice(1)}`);
    const answer = await readFragment(await shareFragment(hostile));
    expect(answer.kind).toBe('refused');
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});
