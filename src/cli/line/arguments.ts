// Reads the arguments after a verb: files, switches and options with a value. Anything not known is refused.

/** How an option takes its value; `pair` may stand alone or before two ids joined by a comma, `values` several times. */
export type OptionKind = 'switch' | 'value' | 'values' | 'pair';

export interface Arguments {
  readonly kind: 'arguments';
  readonly files: readonly string[];
  /** By name without dashes; a switch and a `pair` standing alone hold an empty text, `values` a line each. */
  readonly options: ReadonlyMap<string, string>;
}

export interface WrongArguments {
  readonly kind: 'wrong';
  readonly says: string;
}

export function readArguments(
  words: readonly string[],
  known: Readonly<Record<string, OptionKind>>,
): Arguments | WrongArguments {
  const files: string[] = [];
  const options = new Map<string, string>();
  const left = [...words];
  for (let next = left.shift(); next !== undefined; next = left.shift()) {
    if (next === '--') {
      files.push(...left.splice(0));
    } else if (!next.startsWith('--')) {
      if (next.startsWith('-') && next !== '-') return wrong(`there is no option ${next}`);
      files.push(next);
    } else {
      const fault = readOption(next, left, known, options);
      if (fault !== null) return fault;
    }
  }
  return { kind: 'arguments', files, options };
}

function readOption(
  next: string,
  left: string[],
  known: Readonly<Record<string, OptionKind>>,
  options: Map<string, string>,
): WrongArguments | null {
  const [name = '', given] = splitAtFirst(next.slice(2), '=');
  const kind = Object.hasOwn(known, name) ? known[name] : undefined;
  if (kind === undefined) return wrong(`there is no option --${name}`);
  const before = options.get(name);
  if (before !== undefined && kind !== 'values') return wrong(`--${name} stands there twice`);
  if (kind === 'switch') {
    if (given !== undefined) return wrong(`--${name} takes no value`);
    options.set(name, '');
    return null;
  }
  const needs = kind === 'value' || kind === 'values';
  const value = given ?? (needs || isPair(left[0]) ? left.shift() : '');
  if (value === undefined || (needs && value === '')) return wrong(`--${name} needs a value`);
  options.set(name, before === undefined ? value : `${before}\n${value}`);
  return null;
}

const isPair = (word: string | undefined): boolean => word !== undefined && /^[^,\s]+,[^,\s]+$/.test(word);

function splitAtFirst(text: string, sign: string): readonly [string, string | undefined] {
  const at = text.indexOf(sign);
  return at === -1 ? [text, undefined] : [text.slice(0, at), text.slice(at + 1)];
}

const wrong = (says: string): WrongArguments => ({ kind: 'wrong', says });
