import { describe, expect, it } from 'vitest';
import { materialAt, withMaterial } from '#model/edit/sheet-material.ts';
import { designSchema } from '#model/schema/design-schema.ts';
import { readDesign } from '#model/read/read-design.ts';
import { Templates } from '#state/storage/templates.svelte.ts';
import { fullFile, KNOWN, plainFile } from '#test/model/sample-files.ts';

const former = { height: '4 mm', wall: '0.8 mm', flange: '0.8 mm', chambers: [{ width: '12 mm' }] };

describe('templates in the design file', () => {
  it('should be read with it, and judged nowhere', () => {
    const doc = plainFile();
    const filed = { ...doc, templates: [{ name: 'narrow', former }] };
    const [bare, kept] = [readDesign(doc, KNOWN), readDesign(filed, KNOWN)];
    expect(kept.kind).toBe('design');
    expect(kept).toEqual(bare);
  });

  it('should be refused where they are no such thing, with their place', () => {
    const found = readDesign({ ...plainFile(), templates: [{ name: 'narrow', core: {} }] }, KNOWN);
    expect(found).toMatchObject({ kind: 'bad' });
    expect(JSON.stringify(found)).toMatch(/"field":"templates\[0\]/);
  });

  it('should stand in the published schema', () => {
    expect(Object.keys(designSchema()['properties'] as object)).toContain('templates');
  });
});

describe('the material of a tape', () => {
  it('should go into another without its plies', () => {
    const doc = fullFile();
    const at = doc.layers.findIndex(({ kind }) => kind === 'tape');
    const path = `layers[${at}]`;
    const edited = withMaterial(doc, path, { plyThickness: '0.03 mm' });
    expect(materialAt(edited, path)).toEqual({ plyThickness: '0.03 mm' });
    expect(edited.layers[at]).toHaveProperty('plies');
    expect(withMaterial(edited, path, materialAt(doc, path)).layers[at]).toEqual(doc.layers[at]);
  });
});

describe('Templates', () => {
  it('should keep one of a name and kind', () => {
    const templates = new Templates();
    templates.keep({ name: 'narrow', former });
    templates.keep({ name: 'narrow', wire: { kind: 'bare' } });
    templates.keep({ name: 'narrow', former: { ...former, height: '5 mm' } });
    expect(templates.kept).toEqual([
      { name: 'narrow', former: { ...former, height: '5 mm' } },
      { name: 'narrow', wire: { kind: 'bare' } },
    ]);
    templates.forget({ name: 'narrow', former });
    expect(templates.kept).toEqual([{ name: 'narrow', wire: { kind: 'bare' } }]);
  });
});
