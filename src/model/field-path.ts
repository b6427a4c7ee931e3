// Paths of fields as text and as keys: `layers[3].margins.left.width` <-> ['layers', 3, 'margins', 'left', 'width'].

export type Key = string | number;

const PLAIN = /^[A-Za-z_$][\w$]*$/;

export function fieldPath(keys: readonly PropertyKey[]): string {
  return keys.reduce<string>((path, key) => {
    if (typeof key === 'number') return `${path}[${key}]`;
    const name = String(key);
    if (!PLAIN.test(name)) return `${path}[${JSON.stringify(name)}]`;
    return path === '' ? name : `${path}.${name}`;
  }, '');
}

/** Null for a text that is no path. Only plain names and numbers are read back. */
export function keysOf(path: string): readonly Key[] | null {
  if (path === '') return [];
  if (!/^[A-Za-z_$][\w$]*(?:\.[A-Za-z_$][\w$]*|\[\d{1,6}\])*$/.test(path)) return null;
  return [...path.matchAll(/([A-Za-z_$][\w$]*)|\[(\d+)\]/g)].map(([, name, index]) => name ?? Number(index));
}
