// A strict little reader of XML: throws where tags do not match, attributes are unquoted or a sign stands unescaped.

/** Names of all elements, in the order in which they open. */
export function tagsOf(xml: string): readonly string[] {
  const names: string[] = [];
  const open: string[] = [];
  const tag = /<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/y;
  let at = 0;
  while (at < xml.length) {
    const next = xml.indexOf('<', at);
    checkText(xml.slice(at, next === -1 ? xml.length : next));
    if (next === -1) break;
    tag.lastIndex = next;
    const found = tag.exec(xml);
    if (found === null) throw new Error(`no tag: ${xml.slice(next, next + 80)}`);
    const [whole, closing, name = '', attributes = '', alone] = found;
    checkText(attributes);
    if (closing === '/') {
      const last = open.pop();
      if (last !== name) throw new Error(`</${name}> closes <${last}>`);
    } else {
      names.push(name);
      if (alone !== '/') open.push(name);
    }
    at = next + whole.length;
  }
  if (open.length > 0) throw new Error(`left open: ${open.join(', ')}`);
  return names;
}

function checkText(text: string): void {
  const bad = /&(?!(?:amp|lt|gt|quot|#39);)/.exec(text);
  if (bad) throw new Error(`a bare &: ${text.slice(bad.index, bad.index + 40)}`);
}
