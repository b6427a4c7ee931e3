// Adding, renaming and taking out circuits and windings, with everything in the file that names them.

import { insertAt, removeAt } from './edit-list.ts';
import { editDesign } from './edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

/** A winding of which nothing is known yet, with one layer outermost. */
export function addWinding(doc: DesignFile, circuit: string): DesignFile {
  const taken = doc.windings.map(({ id }) => id);
  const id = freeWindingId(
    taken,
    doc.circuits.findIndex((each) => each.id === circuit),
  );
  const winding = { id, circuit, wire: { kind: 'unknown', conductor: 'unknown' }, leads: 'unknown' };
  const wound = insertAt(doc, 'windings', doc.windings.length, winding);
  return insertAt(wound, 'layers', wound.layers.length, { kind: 'winding', winding: id, turns: 'unknown' });
}

/** Nothing changes where the name is empty or taken. */
export function renameWinding(doc: DesignFile, index: number, name: string): DesignFile {
  const old = doc.windings[index]?.id;
  if (old === undefined || name === '' || doc.windings.some(({ id }) => id === name)) return doc;
  const renamed = editDesign(doc, `windings[${index}].id`, name);
  const layers = renamed.layers.map((layer) =>
    layer.kind === 'winding' && layer.winding === old ? { ...layer, winding: name } : layer,
  );
  return variantTurns({ ...renamed, layers }, old, name);
}

/** Turns of a variant go by the winding's name; null takes them out. */
function variantTurns(doc: DesignFile, old: string, name: string | null): DesignFile {
  return (doc.converter?.variants ?? []).reduce((edited, { turns }, v) => {
    const { [old]: held, ...others } = turns ?? {};
    if (held === undefined) return edited;
    return editDesign(
      edited,
      `converter.variants[${v}].turns`,
      name === null ? others : { ...others, [name]: held },
    );
  }, doc);
}

/** Its layers go with it. */
export function removeWinding(doc: DesignFile, index: number): DesignFile {
  const id = doc.windings[index]?.id;
  const layers = doc.layers.flatMap((layer, i) =>
    layer.kind === 'winding' && layer.winding === id ? [i] : [],
  );
  const bare = layers.reverse().reduce((edited, layer) => removeAt(edited, 'layers', layer), doc);
  return removeAt(id === undefined ? bare : variantTurns(bare, id, null), 'windings', index);
}

/** Its windings, voltages, outside distances and bridges go with it; what was bonded to it floats. */
export function removeCircuit(doc: DesignFile, index: number): DesignFile {
  const id = doc.circuits[index]?.id;
  if (id === undefined) return doc;
  const windings = doc.windings.flatMap((winding, i) => (winding.circuit === id ? [i] : []));
  let edited = windings.reverse().reduce(removeWinding, doc);
  for (const list of ['workingVoltages', 'outside', 'bridges'] as const) {
    const places = (edited[list] ?? []).flatMap(({ between }, i) => (between.includes(id) ? [i] : []));
    edited = places.reverse().reduce((each, place) => removeAt(each, list, place), edited);
  }
  edited = unbonded(edited, id);
  return removeAt(edited, 'circuits', index);
}

function unbonded(doc: DesignFile, circuit: string): DesignFile {
  let edited = doc.core?.bond === circuit ? editDesign(doc, 'core.bond', 'floating') : doc;
  doc.parts?.forEach((part, i) => {
    if (part.bond === circuit) edited = editDesign(edited, `parts[${i}].bond`, 'floating');
  });
  doc.layers.forEach((layer, i) => {
    if (layer.kind === 'screen' && layer.circuit === circuit)
      edited = editDesign(
        editDesign(edited, `layers[${i}].circuit`, undefined),
        `layers[${i}].lead`,
        undefined,
      );
  });
  edited = withoutOutput(edited, 'converter.outputs', doc.converter?.outputs, circuit);
  doc.converter?.variants?.forEach((variant, i) => {
    edited = withoutOutput(edited, `converter.variants[${i}].outputs`, variant.outputs, circuit);
  });
  return edited;
}

function withoutOutput(
  doc: DesignFile,
  list: string,
  outputs: readonly { readonly circuit: string }[] | undefined,
  circuit: string,
): DesignFile {
  const place = outputs?.findIndex((output) => output.circuit === circuit) ?? -1;
  return place < 0 ? doc : removeAt(doc, list, place);
}

export function freeWindingId(taken: readonly string[], circuit: number): string {
  const letters = ['P', 'S', 'A', 'T', 'B', 'U', 'C', 'V'];
  const wish = letters[circuit] ?? 'W';
  if (!taken.includes(wish)) return wish;
  for (let n = 2; ; n++) if (!taken.includes(`${wish}${n}`)) return `${wish}${n}`;
}
