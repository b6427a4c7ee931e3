// Conductors that metal joins: bonds, and parts that touch the core, a screen or each other, make one of several.

import type { Design } from '#model/design.ts';

export interface MetalTies {
  /** The circuit that a conductor belongs to; its own name, or that of what floats with it, where it belongs to none. */
  readonly nameOf: (conductor: string) => string;
  /** Every conductor that metal joins to another, with its `nameOf`. */
  readonly names: readonly (readonly [conductor: string, name: string])[];
  /** Circuits that metal joins, though the file holds them apart. */
  readonly joined: readonly (readonly [string, string])[];
}

/** `coreTo`: circuit that the core is bound to, null where it floats. */
export function metalTies({ circuits, parts, layers }: Design, coreTo: string | null): MetalTies {
  const groups = new Map<string, Set<string>>();
  const groupOf = (conductor: string): Set<string> => groups.get(conductor) ?? new Set([conductor]);
  const join = (a: string, b: string): void => {
    const all = new Set([...groupOf(a), ...groupOf(b)]);
    for (const conductor of all) groups.set(conductor, all);
  };
  if (coreTo !== null) join('core', coreTo);
  for (const { id, bond, touches } of parts) {
    if (bond !== 'floating') join(id, bond);
    for (const other of touches) join(id, other);
  }
  for (const layer of layers)
    if (layer.kind === 'screen' && layer.circuit !== null && layer.id !== null) join(layer.id, layer.circuit);
  const ids = circuits.map(({ id }) => id);
  const circuitsIn = (group: ReadonlySet<string>) => ids.filter((id) => group.has(id));
  const joined = [...new Set(groups.values())].flatMap((group) => {
    const within = circuitsIn(group);
    return within.flatMap((a, i) => within.slice(i + 1).map((b) => [a, b] as const));
  });
  const nameOf = (conductor: string): string => {
    const group = groups.get(conductor);
    if (group === undefined || ids.includes(conductor)) return conductor;
    return circuitsIn(group)[0] ?? (group.has('core') ? 'core' : [...group].sort()[0]!);
  };
  const names = [...groups.keys()].map((conductor) => [conductor, nameOf(conductor)] as const);
  return { nameOf, names, joined };
}
