// A series on the page: the build on the sheet with each line of a table, judged beside the page one after the other.

import { limitingDistance } from '#judge/compare/limiting-distance.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readDesign } from '#model/read/read-design.ts';
import { readVariants, type Variant } from '#model/read/read-variants.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { SeriesRow } from '#words/mend/series-words.ts';
import type { JudgeErrand } from '#state/judging/judge-errand.ts';

const MOST_BYTES = 2_000_000;

export class SeriesRun {
  fields: readonly string[] = $state.raw([]);
  rows: readonly SeriesRow[] = $state.raw([]);
  /** How many there are in all; null before a table was read. */
  all: number | null = $state(null);
  isJudging = $state(false);
  says: string | null = $state(null);
  #turn = 0;
  readonly #judge: JudgeErrand;

  constructor(judge: JudgeErrand) {
    this.#judge = judge;
  }

  async takeFile(doc: DesignFile, file: File): Promise<void> {
    if (file.size > MOST_BYTES) this.says = `${file.name} has ${file.size} bytes; a table has at most 2 MB.`;
    else await this.take(doc, await file.text());
  }

  async take(doc: DesignFile, table: string): Promise<void> {
    const turn = ++this.#turn;
    const found = readVariants(doc, table);
    this.rows = [];
    this.says = found.kind === 'bad' ? `${found.says}.` : null;
    this.all = found.kind === 'bad' ? null : found.variants.length;
    if (found.kind === 'bad') return;
    this.fields = found.fields;
    this.isJudging = true;
    for (const variant of found.variants) {
      const row = await this.#rowOf(variant);
      if (turn !== this.#turn) return;
      this.rows = [...this.rows, row];
    }
    this.isJudging = false;
  }

  /** What is judged so far stays. */
  stop(): void {
    this.#turn++;
    this.isJudging = false;
  }

  async #rowOf({ name, cells, doc }: Variant): Promise<SeriesRow> {
    const read = readDesign(doc, knownIds);
    const found = read.kind === 'bad' ? null : await this.#judge(read.design);
    const fault = read.kind === 'bad' ? (read.faults[0] ?? null) : null;
    if (found?.kind !== 'judged') return { name, cells, verdict: null, fault, limiting: null, height: null };
    const { verdict } = found.judgement;
    return {
      name,
      cells,
      verdict: verdict.verdict,
      fault,
      limiting: limitingDistance(verdict),
      height: verdict.fit.height.used,
    };
  }
}
