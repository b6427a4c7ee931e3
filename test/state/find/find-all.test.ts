import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import { findAll } from '#state/find/find-all.ts';

const said = (typed: string): readonly string[] => findAll(firstBuild, typed).map(({ says }) => says);

describe('what typed words mean', () => {
  it('should be a field of the build, by its words in any order, with what stands in it', () => {
    const [found] = findAll(firstBuild, 'layer 3 left margin');
    expect(found).toMatchObject({
      kind: 'field',
      path: 'layers[2].margins.left.width',
      says: 'left margin, layer 3',
      value: '1.65 mm',
    });
    expect(said('margin left').length).toBeGreaterThan(1);
  });

  it('should be a field by what stands in it', () => {
    expect(findAll(firstBuild, 'phenolic')).toContainEqual(
      expect.objectContaining({ kind: 'field', path: 'former.material' }),
    );
  });

  it('should be a page and a term, and nothing where nothing is typed or meant', () => {
    expect(findAll(firstBuild, 'spread')[0]).toEqual({ kind: 'page', name: 'spread', says: 'Spread' });
    expect(findAll(firstBuild, 'kriechstrecke')).toContainEqual(
      expect.objectContaining({ kind: 'term', says: 'creepage distance' }),
    );
    expect(findAll(firstBuild, ' ')).toEqual([]);
    expect(findAll(firstBuild, 'qqqqqqq')).toEqual([]);
  });

  it('should hold a tolerance for one field, and leave out what is no word', () => {
    const doc = { former: { height: { value: '4.2 mm', plusMinus: '0.1 mm' } }, notes: 'x'.repeat(500) };
    expect(findAll(doc, 'height')).toContainEqual(
      expect.objectContaining({ path: 'former.height', value: '4.2 mm ± 0.1 mm' }),
    );
    expect(findAll(doc, 'xxxx')).toEqual([]);
  });
});
