// Where a text stops being JSON: the offset of the first character that cannot stand where it does.
// Engines word this each in its own way, or not at all; hence a scanner of our own, run only on texts already refused.

const SPACE = /[\t\n\r ]*/y;
const STRING = /"(?:(?!\p{Cc})[^"\\]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const SCALAR = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

/** What may come next: a value, a key, the colon after it, or what follows a value. */
type Next = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | 'after';

/** The length of the text where it only ends too early. */
export function jsonFault(text: string): number {
  const open: ('[' | '{')[] = [];
  let next: Next = 'value';
  let at = 0;
  const take = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    at += found?.length ?? 0;
    return found !== undefined;
  };
  for (;;) {
    take(SPACE);
    const sign = text[at];
    if (sign === undefined || (next === 'after' && open.length === 0)) return at;
    const closes =
      (next === 'after' || next === 'value or ]' || next === 'key or }') &&
      sign === CLOSING[open.at(-1) ?? '['];
    const isValue = next === 'value' || next === 'value or ]';
    if (closes && closesHere(next, sign)) {
      open.pop();
      next = 'after';
      at += 1;
    } else if (next === 'after' && sign === ',') {
      next = open.at(-1) === '{' ? 'key' : 'value';
      at += 1;
    } else if (next === ':' && sign === ':') {
      next = 'value';
      at += 1;
    } else if ((next === 'key' || next === 'key or }') && take(STRING)) next = ':';
    else if (isValue && (sign === '[' || sign === '{')) {
      open.push(sign);
      next = sign === '[' ? 'value or ]' : 'key or }';
      at += 1;
    } else if (isValue && (take(STRING) || take(SCALAR))) next = 'after';
    else return at;
  }
}

const CLOSING = { '[': ']', '{': '}' } as const;

const closesHere = (next: Next, sign: string): boolean =>
  next === 'after' || (next === 'value or ]' && sign === ']') || (next === 'key or }' && sign === '}');
