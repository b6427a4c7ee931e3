// The design file inside the report, so that the tool can open a report as it opens a design.

import { block, raw, tag, type Markup } from '#papers/html/page/markup.ts';

const ID = 'layerwright-design';

/** In JSON every `<` may be written as an escape, so that no text can end the element. */
export function attached(designText: string): Markup | null {
  const quiet = designText.replace(/</g, '\\u003c');
  const script = raw(`<script type="application/json" id="${ID}">\n${quiet.trim()}\n</script>`);
  const words = 'The design file is attached to this report and opens in the tool as it was judged.';
  return block('Enclosed', tag('p', {}, words), script);
}

/** The design file that a report holds; null where the text is no report. */
export function attachedDesign(text: string): string | null {
  if (!/^\s*<!doctype html>/i.test(text.slice(0, 100))) return null;
  const start = text.indexOf(`<script type="application/json" id="${ID}">`);
  const from = text.indexOf('>', start) + 1;
  const end = text.indexOf('</script>', from);
  return start === -1 || end === -1 ? null : text.slice(from, end).trim();
}
