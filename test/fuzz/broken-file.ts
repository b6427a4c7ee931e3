// Design files broken or driven to their limits, structure-aware: a whole file, a few of its fields changed to what may be the
// worst that can stand there. Seeded, so that what was found once is found again.

type Node = Record<string, unknown> | unknown[];

export interface Random {
  readonly below: (n: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
}

/** A small generator (mulberry32); the same numbers for the same seed. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const below = (n: number): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) % n;
  };
  return { below, pick: (list) => list[below(list.length)]! };
}

/** Quantities at their ends and beyond, words of the format where they do not belong, and what is no value at all. */
const VALUES: readonly unknown[] = [
  0, -0, 1, -1, 2, 3, 9, 64, 400, 500, 20000, 1e-308, 5e-324, 1e308, 1.5, 0.1,
  '0 mm', '1 nm', '2 nm', '0.001 mm', '1 m', '0.06 mm', '3 mm', '12.7 mm', '500 mm', '999.999999 mm', '-1 nm',
  '1e-308 Hz', '0.1 Hz', '10 MHz', '50 Hz', '1 uV', '100 kV', '10000 m', '-50 degC', '400 degC', '1 pF', '1 uF',
  { value: '3 mm', plusMinus: '3 mm' }, { value: '3 mm', plusMinus: '1 nm' }, { value: '1 m', plusMinus: '0.5 m' },
  { value: '100 V', plusMinus: '100 V' }, { value: 3 }, { value: '3 mm', plusMinus: '1e-308 mm' },
  'unknown', 'not-judged', 'floating', 'core', 'pri', 'out', 'left', 'right', 'riser', 'slot', 'top', 'none',
  'mains', 'touchable', 'earth', 'isolated', 'tape', 'winding', 'screen', 'polyester-tape-25', 'ptfe', 'pbt',
  'bare', 'enamelled', 'litz', 'fully-insulated', 'layer-insulated', 'potted', 'varnish', 'dc', 'ac',
  true, false, null, '', ' ', '\u202e', '\u0000', '=1+1', 'x'.repeat(70), [], {}, [[]], [null], 'NaN', '∞',
  'constructor', 'toString', '__proto__',
]; // prettier-ignore

/** Each holder of a value in the file with its key, lists and records alike. */
function places(json: unknown): readonly { readonly holder: Node; readonly key: string | number }[] {
  const found: { holder: Node; key: string | number }[] = [];
  const walk = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    for (const key of Object.keys(node)) {
      found.push({ holder: node as Node, key: Array.isArray(node) ? Number(key) : key });
      walk((node as Record<string, unknown>)[key]);
    }
  };
  walk(json);
  return found;
}

const at = (holder: Node, key: string | number): unknown => (holder as Record<string | number, unknown>)[key];
const put = (holder: Node, key: string | number, value: unknown): void => {
  (holder as Record<string | number, unknown>)[key] = value;
};

type Change = (json: unknown, random: Random) => void;

const FIGURES = [0, 1e-9, 1e-6, 0.0001, 0.001, 0.02, 0.06, 0.4, 1, 2, 3, 5, 12, 50, 230, 999.999, 5e4];
const COUNTS = [0, 1, 2, 3, 4, 9, 15, 16, 63, 64, 399, 400, 500, 19_999, 20_000];

/** Another one of its kind, which may well be read: the same unit, another count, or what stands under the same key elsewhere. */
function another(value: unknown, key: string | number, json: unknown, random: Random): unknown {
  const [, unit] = (typeof value === 'string' && /^[-\d.]+(\s*[A-Za-z%°]+)$/.exec(value)) || [];
  if (unit !== undefined) {
    const text = `${random.pick(FIGURES)}${unit}`;
    return random.below(5) > 0 ? text : { value: text, plusMinus: `${random.pick(FIGURES)}${unit}` };
  }
  if (typeof value === 'number') return random.pick(COUNTS);
  if (typeof value === 'boolean') return !value;
  const alike = places(json).filter((place) => place.key === key);
  const { holder } = random.pick(alike);
  return random.below(4) === 0 ? 'unknown' : structuredClone(at(holder, key));
}

const CHANGES: readonly Change[] = [
  // another value of its kind, most often
  ...Array.from({ length: 14 }, (): Change => (json, random) => {
    const { holder, key } = random.pick(places(json));
    put(holder, key, another(at(holder, key), key, json, random));
  }),
  // any value
  ...Array.from({ length: 2 }, (): Change => (json, random) => {
    const { holder, key } = random.pick(places(json));
    put(holder, key, structuredClone(random.pick(VALUES)));
  }),
  // a value from elsewhere in the file
  (json, random) => {
    const all = places(json);
    const { holder, key } = random.pick(all);
    const from = random.pick(all);
    put(holder, key, structuredClone(at(from.holder, from.key)));
  },
  // a field or an entry taken out
  (json, random) => {
    const { holder, key } = random.pick(places(json));
    if (Array.isArray(holder)) holder.splice(Number(key), 1);
    else delete holder[key];
  },
  // an entry twice, or many times
  (json, random) => {
    const lists = places(json).filter(({ holder }) => Array.isArray(holder));
    const { holder, key } = random.pick(lists);
    const times = random.pick([1, 1, 2, 5, 20]);
    for (let k = 0; k < times; k++) (holder as unknown[]).push(structuredClone(at(holder, key)));
  },
  // two entries swapped
  (json, random) => {
    const { holder, key } = random.pick(places(json).filter(({ holder }) => Array.isArray(holder)));
    const list = holder as unknown[];
    const other = random.below(list.length);
    [list[Number(key)], list[other]] = [list[other], list[Number(key)]];
  },
  // a field that nobody knows, or nesting without end
  (json, random) => {
    const { holder } = random.pick(places(json).filter(({ holder }) => !Array.isArray(holder)));
    let deep: unknown = 1;
    for (let k = random.pick([0, 0, 40, 300]); k > 0; k--) deep = k % 2 ? [deep] : { a: deep };
    put(holder, random.pick(['extra', 'notes', 'a b', '"']), deep);
  },
];

/** The text of a file made from one of `whole`, with one to four changes; now and then cut or garbled as text. */
export function brokenFile(random: Random, whole: readonly unknown[]): string {
  const json = structuredClone(random.pick(whole));
  const times = 1 + random.below(4);
  for (let k = 0; k < times; k++) random.pick(CHANGES)(json, random);
  const text = JSON.stringify(json);
  if (random.below(25) > 0) return text;
  const cut = random.below(text.length);
  return random.pick([
    text.slice(0, cut),
    text.slice(0, cut) + random.pick(['\u0000', '}', '"', ',', '1e999']) + text.slice(cut),
  ]);
}
