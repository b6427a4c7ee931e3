// Acts upon the build as a whole: the core bonded, ends taped down, a winding put elsewhere in the order of layers.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { moveLayers } from '#model/edit/layer-edits.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';

/** To the mains side, to earth or to what may be touched; where nobody knows the bond, also left floating. */
export function bondActs(doc: DesignFile): readonly Act[] {
  const now = doc.core?.bond ?? 'unknown';
  const first = (role: string) => doc.circuits.find((circuit) => circuit.role === role)?.id;
  const ids = [first('mains'), first('earth'), first('touchable')].flatMap((id) =>
    id === undefined ? [] : [id],
  );
  return [...(now === 'unknown' ? ['floating'] : []), ...ids]
    .filter((to) => to !== now)
    .map((to) => ({ kind: 'bond', on: 'core.bond', set: [{ field: 'core.bond', to }], amount: null }));
}

/**
 * The end turns of the windings of a spot taped down. It earns credit only by evidence, so the act writes the line of the
 * winding instruction that has to stand behind it. Of a build taken apart there is no instruction left to write.
 */
export function tapeDownActs(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  if (doc.origin === 'dissected') return [];
  const ids = spot.layers.flatMap((index) => {
    const layer = doc.layers[index];
    return layer?.kind === 'winding' ? [layer.winding] : [];
  });
  return [...new Set(ids)].flatMap((id): readonly Act[] => {
    const index = doc.windings.findIndex((winding) => winding.id === id);
    const field = `windings[${index}].anchored`;
    if (index < 0 || doc.windings[index]?.anchored === true) return [];
    const says = `Winding instruction, to be written and kept with the build: end turns of ${id} taped down.`;
    const entry = { id: `ends-${index + 1}-taped`, kind: 'document', says, fields: [field] } as const;
    const evidence = [...(doc.evidence ?? []).filter((one) => one.id !== entry.id), entry];
    const set = [
      { field, to: true },
      { field: 'evidence', to: evidence },
    ];
    return [{ kind: 'tape-down', on: field, set, amount: null }];
  });
}

/** A winding of the spot beside another of its own side, inside or outside of it. */
export function orderActs(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  const roleOf = (index: number): string | null => {
    const layer = doc.layers[index];
    if (layer?.kind !== 'winding') return null;
    const circuit = doc.windings.find(({ id }) => id === layer.winding)?.circuit;
    return doc.circuits.find(({ id }) => id === circuit)?.role ?? null;
  };
  const moving = spot.layers.filter((index) => roleOf(index) !== null);
  return moving.flatMap((index) =>
    doc.layers.flatMap((_, other): readonly Act[] => {
      if (other === index || roleOf(other) !== roleOf(index)) return [];
      return [other, other + 1]
        .filter((before) => before !== index && before !== index + 1)
        .map((before) => ({
          kind: 'order',
          on: `order ${index} ${before}`,
          set: [{ field: 'layers', to: moveLayers(doc, [index], before).doc.layers }],
          amount: null,
        }));
    }),
  );
}
