// Changes one place of plain readonly data, sharing the rest. Paths are those of the file, e.g. `layers[2].plies`.

export function editAt<T>(root: T, path: string, change: (value: unknown) => unknown): T {
  const keys = path.split(/[.[\]]/).filter((key) => key !== '');
  return edited(root, keys, change) as T;
}

function edited(value: unknown, keys: readonly string[], change: (value: unknown) => unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return change(value);
  if (Array.isArray(value))
    return value.map((item, i) => (i === Number(key) ? edited(item, rest, change) : item));
  const record = value as Record<string, unknown>;
  return { ...record, [key]: edited(record[key], rest, change) };
}
