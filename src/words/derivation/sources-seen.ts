// In which documents the figures of a derivation were seen, each once, and that some were recalled where they were.

import { type Because, citesOf } from '#standards/because.ts';
import { sourceNamed } from '#standards/sources.ts';
import { sourceName } from '#words/text/source-name.ts';

export interface SourceSeen {
  readonly says: string;
  /** Public address; null where there is none. */
  readonly address: string | null;
}

export function sourcesSeen(whys: readonly Because[]): readonly SourceSeen[] {
  const cites = whys.flatMap(citesOf);
  const documents = new Map<string, SourceSeen>();
  for (const key of cites.flatMap(({ sources, own }) => (own === undefined ? sources : []))) {
    const source = sourceNamed(key);
    if (source !== null)
      documents.set(sourceName(source), { says: sourceName(source), address: source.address });
  }
  const own = cites.flatMap((cite) =>
    cite.own === undefined
      ? []
      : [`confirmed by the user: ${cite.standard}, ${cite.cell}, ${cite.own.clause}, ${cite.own.on}`],
  );
  const recalled = cites.some(({ confirmed, own: by }) => confirmed === 'memory' && by === undefined);
  return [
    ...documents.values(),
    ...[...new Set(own)].map((says) => ({ says, address: null })),
    ...(recalled ? [{ says: 'memory: recalled, no document seen', address: null }] : []),
  ];
}
