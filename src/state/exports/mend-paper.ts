// The report of the ways to mend that are found so far, saved as one HTML file. Only the page of mends asks for it.

import { compared } from '#judge/compare/comparison.ts';
import { copperReport } from '#judge/study/copper.ts';
import type { ComparedBuild } from '#papers/html/compare/compared-build.ts';
import { mendReport, type Way } from '#papers/html/compare/mend-report.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { Design } from '#model/design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { ShownMending } from '#state/searches/mend-search.svelte.ts';
import { fileName, saveFile } from '#state/storage/files.ts';
import { inMillimetres } from '#words/text/length-unit.ts';

interface Judged {
  readonly doc: DesignFile;
  readonly design: Design;
  readonly judgement: Drawable;
}

export function saveMendReport({ doc, design, judgement }: Judged, mending: ShownMending): void {
  const built = (says: string, of: Judged): ComparedBuild => ({
    says,
    ...of,
    copper: copperReport(of.design, of.judgement.verdict.fit),
  });
  const found = built('as found', { doc, design, judgement });
  const ways = mending.proposals.flatMap((proposal, i): readonly Way[] => {
    const [drawn, read] = [mending.drawn[i], mending.read[i]];
    if (drawn === undefined || read === undefined) return [];
    const build = built(`way ${i + 1}`, { doc: proposal.design, design: read, judgement: drawn });
    const comparison = compared(
      { doc, verdict: judgement.verdict },
      { doc: build.doc, verdict: build.judgement.verdict },
    );
    return [{ build, comparison }];
  });
  const html = inMillimetres(() => mendReport({ found, mending, ways }));
  saveFile(html, fileName(`${doc.title} ways to mend`, 'html'), 'text/html');
}
