// Two builds beside each other: which versions there are (the steps of undo, mends looked at, files opened), which two are
// chosen, and what each is judged as. Judged beside the page, each once.

import { compared, type Comparison } from '#judge/compare/comparison.ts';
import { copperReport } from '#judge/study/copper.ts';
import { fitChanges, type FitChange, type FitSide } from '#words/mend/fit-changes.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Editor } from '#state/document/editor.svelte.ts';
import { readFile } from '#state/storage/files.ts';
import type { JudgeErrand } from '#state/judging/judge-errand.ts';

export type { ComparedPair, Comparison } from '#judge/compare/comparison.ts';

export interface Version {
  readonly says: string;
  readonly doc: DesignFile;
}

export type JudgedVersion =
  | { readonly kind: 'judged'; readonly design: Design; readonly judgement: Drawable }
  | { readonly kind: 'failed'; readonly says: string };

/** More steps of undo than these are not shown. */
const MOST_STEPS = 12;

export class Comparing {
  /** Mends that were looked at and files that were opened beside it. */
  #others: readonly Version[] = $state.raw([]);
  #judged: readonly { readonly doc: DesignFile; readonly found: JudgedVersion }[] = $state.raw([]);
  #a: DesignFile | null = $state.raw(null);
  #b: DesignFile | null = $state.raw(null);
  /** What was wrong with the last file that was opened. */
  says: string | null = $state(null);
  readonly #asked = new WeakSet<DesignFile>();
  readonly #editor: Editor;
  readonly #judge: JudgeErrand;

  constructor(editor: Editor, judge: JudgeErrand) {
    this.#editor = editor;
    this.#judge = judge;
  }

  /** Oldest first; what was undone and what was looked at comes after the build as it is. */
  readonly versions: readonly Version[] = $derived.by(() => {
    const { doc } = this.#editor;
    const { past, future } = this.#editor.history(MOST_STEPS);
    const before = past.map(({ says, doc: was }) => ({ says: `before: ${says}`, doc: was })).reverse();
    const after = future.map(({ says, doc: then }) => ({ says: `undone: ${says}`, doc: then }));
    const own = [...before, { says: 'on the sheet', doc }, ...after];
    const isNew = (other: Version): boolean => !own.some((version) => version.doc === other.doc);
    return [...own, ...this.#others.filter(isNew)];
  });

  /** The first side: the one chosen, or the version before the last, or the build on the sheet. */
  readonly a: Version = $derived.by(() => this.#chosen(this.#a) ?? this.#before(this.b));
  readonly b: Version = $derived.by(() => this.#chosen(this.#b) ?? this.#onSheet());

  judgedOf({ doc }: Version): JudgedVersion | null {
    return this.#judged.find((one) => one.doc === doc)?.found ?? null;
  }

  readonly comparison: Comparison | null = $derived.by(() => {
    const [a, b] = [this.judgedOf(this.a), this.judgedOf(this.b)];
    if (a?.kind !== 'judged' || b?.kind !== 'judged') return null;
    return compared(
      { doc: this.a.doc, verdict: a.judgement.verdict },
      { doc: this.b.doc, verdict: b.judgement.verdict },
    );
  });

  /** What either takes of its window and of copper. */
  readonly fit: readonly FitChange[] = $derived.by(() => {
    const [a, b] = [this.judgedOf(this.a), this.judgedOf(this.b)].map((one) =>
      one?.kind === 'judged' ? fitSide(one) : null,
    );
    return a && b ? fitChanges(a, b) : [];
  });

  /** A version to look at beside another. */
  show(a: DesignFile | null, b: Version): void {
    this.#others = [...this.#others.filter(({ says }) => says !== b.says), b];
    this.#a = a;
    this.#b = b.doc;
  }

  choose(side: 'a' | 'b', { doc }: Version): void {
    if (side === 'a') this.#a = doc;
    else this.#b = doc;
  }

  swap(): void {
    [this.#a, this.#b] = [this.b.doc, this.a.doc];
  }

  async open(file: File): Promise<void> {
    const found = await readFile(file);
    this.says = found.kind === 'build' ? null : `${file.name} is no design file that could be judged.`;
    if (found.kind === 'build') this.show(this.a.doc, { says: file.name, doc: found.doc });
  }

  /** Judges what is shown and was not yet. */
  judgeShown(): void {
    for (const { doc } of this.versions) {
      if (this.#asked.has(doc)) continue;
      this.#asked.add(doc);
      void this.#ask(doc);
    }
  }

  async #ask(doc: DesignFile): Promise<void> {
    const read = readDesign(doc, knownIds);
    if (read.kind === 'bad') return this.#keep(doc, { kind: 'failed', says: read.faults[0]?.says ?? '' });
    const found = await this.#judge(read.design);
    this.#keep(
      doc,
      found.kind === 'judged'
        ? { kind: 'judged', design: read.design, judgement: found.judgement }
        : { kind: 'failed', says: found.says },
    );
  }

  #keep(doc: DesignFile, found: JudgedVersion): void {
    this.#judged = [...this.#judged, { doc, found }];
  }

  #chosen(doc: DesignFile | null): Version | null {
    return this.versions.find((version) => version.doc === doc) ?? null;
  }

  #onSheet(): Version {
    return this.#chosen(this.#editor.doc) ?? { says: 'on the sheet', doc: this.#editor.doc };
  }

  #before(version: Version): Version {
    const place = this.versions.indexOf(version);
    return this.versions[place - 1] ?? version;
  }
}

const fitSide = ({
  design,
  judgement: { verdict },
}: Extract<JudgedVersion, { kind: 'judged' }>): FitSide => ({
  fit: verdict.fit,
  copper: copperReport(design, verdict.fit),
});
