// The build under the hand: its file, every step back and forward, and the judgement that follows each change.
// The file may hold a wrong entry; then the faults name their fields and the last good judgement stays in view.
// A drag or a half-typed figure is a preview: shown and judged, but no step of the history until it is committed.

import type { BadInput } from '#model/faults/bad-input.ts';
import type { Design } from '#model/design.ts';
import type { ReadDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { applyEdits, type Edit } from '#state/fields/edit.ts';
import {
  NewestJudgement,
  type JudgeBeside,
  type JudgedBuild,
  type Lost,
  type Newest,
  type Standing,
} from '#state/judging/newest-judgement.svelte.ts';

export interface Judging {
  readonly read: (doc: DesignFile) => ReadDesign;
  readonly judge: (design: Design) => Drawable;
  /** A build as it lies, not judged: drawn until it is. Left out, nothing is drawn before. */
  readonly sketch?: (design: Design) => Drawable;
  /** Judging beside the page; left out, all is judged at once. */
  readonly beside?: JudgeBeside;
  /** A judgement that is there from the start. */
  readonly first?: JudgedBuild;
}

/** A linked list, so that a step costs the same however many went before. `says` names the step that left it. */
interface Step {
  readonly doc: DesignFile;
  readonly says: string;
  readonly before: Step | null;
}

/** A step as it is kept: where it leads, and what it takes back or brings again. */
export interface HistoryStep {
  readonly says: string;
  readonly doc: DesignFile;
}

/** Nearest to the present first. */
export interface History {
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
}

export class Editor {
  #doc: DesignFile = $state.raw() as DesignFile;
  #preview: DesignFile | null = $state.raw(null);
  /** What the preview tries. */
  #tried: readonly Edit[] = [];
  #past: Step | null = $state.raw(null);
  #future: Step | null = $state.raw(null);
  /** Counts changes of the kept document, so that saving knows what is new. */
  #revision = $state(0);
  /** What was read last: a derived value that nothing on the page watches is worked out at every look. */
  #lastRead: { readonly doc: DesignFile; readonly reading: ReadDesign } | null = null;
  readonly #judging: Judging;
  readonly #newest: NewestJudgement;

  constructor(doc: DesignFile, judging: Judging) {
    this.#doc = doc;
    this.#judging = judging;
    this.#newest = new NewestJudgement(judging.judge, judging.beside ?? null, judging.first ?? null);
  }

  readonly #reading: ReadDesign = $derived.by(() => {
    const doc = this.shown;
    if (this.#lastRead?.doc !== doc) this.#lastRead = { doc, reading: this.#judging.read(doc) };
    return this.#lastRead.reading;
  });

  readonly #outcome: Newest = $derived.by(() => {
    const reading = this.#reading;
    if (reading.kind !== 'bad') this.#newest.follow(this.shown, reading.design);
    return this.#newest.look();
  });

  /** The newest judgement that could be made: of `shown`, of what was shown shortly before, or of the last state without a wrong entry. */
  readonly judged: JudgedBuild | null = $derived.by(() => this.#outcome.judged);

  /** The last state without a wrong entry, which may be ahead of what is judged. */
  readonly design: Design | null = $derived.by(() => this.#outcome.newest?.design ?? null);

  /** How it stands with the judgement of the last state without a wrong entry. */
  readonly standing: Standing = $derived.by(() => this.#outcome.standing);

  /** What is shown is still being judged; `judged` is of something older. */
  readonly isBehind: boolean = $derived.by(() => this.standing.kind === 'judging');

  /** Places in the file name other things in `judged` than in `design`. */
  readonly isShifted: boolean = $derived.by(() => this.#outcome.isShifted);

  /** There is no thread beside the page: it stands still while it judges. */
  readonly isAlone: boolean = $derived.by(() => this.#outcome.isAlone);

  /** The thread was lost over this build and started anew. */
  readonly restarted: Lost | null = $derived.by(() => this.#outcome.restarted);

  /** What is drawn: the newest judgement, or where places changed since, the build as it lies. */
  readonly drawn: JudgedBuild | null = $derived.by(() => {
    const { judged, newest, isShifted } = this.#outcome;
    if (!isShifted || newest === null) return judged;
    const judgement = this.#sketched(newest.design);
    return judgement === null ? null : { doc: newest.doc, design: newest.design, judgement };
  });

  /** The file as kept, without what is only tried. */
  get doc(): DesignFile {
    return this.#doc;
  }

  /** The file as it is drawn and judged now. */
  get shown(): DesignFile {
    return this.#preview ?? this.#doc;
  }

  get isPreviewing(): boolean {
    return this.#preview !== null;
  }

  get revision(): number {
    return this.#revision;
  }

  get faults(): readonly BadInput[] {
    return this.#reading.kind === 'bad' ? this.#reading.faults : [];
  }

  /** The judgement of what is shown, for whatever leaves the page or is noted; null where there is none yet. */
  get judgedNow(): JudgedBuild | null {
    return this.standing.kind === 'judged' ? this.judged : null;
  }

  /** The same, waited for; null where it will not come. */
  async judgedSoon(): Promise<JudgedBuild | null> {
    // seen first: only then is it known what is shown
    if (this.isBehind) await this.#newest.whenSettled();
    return this.judgedNow;
  }

  /** Ends the judging that is going on. */
  stopJudging(): void {
    if (this.isBehind) this.#newest.stop();
  }

  /** This build was judged by more than before, its field. */
  takeOver(design: Design, judgement: Drawable): void {
    this.#newest.takeOver(design, judgement);
  }

  /** Judges what was stopped, or over which the thread was lost. */
  judgeAgain(): void {
    this.#newest.again();
  }

  #sketched(design: Design): Drawable | null {
    try {
      return this.#judging.sketch?.(design) ?? null;
    } catch {
      // what breaks the sketch breaks judging too, which says so
      return null;
    }
  }

  /** What an undo would take back, in words; null where there is nothing. */
  get undoes(): string | null {
    return this.#past?.says ?? null;
  }

  get redoes(): string | null {
    return this.#future?.says ?? null;
  }

  faultAt(path: string): BadInput | null {
    const below = (field: string): boolean => /^[.[]/.test(field.slice(path.length));
    return (
      this.faults.find(({ field }) => field === path || (field.startsWith(path) && below(field))) ?? null
    );
  }

  /** Takes a whole document over as one step. */
  change(doc: DesignFile, says: string): void {
    this.#preview = null;
    if (doc === this.#doc) return;
    this.#past = { doc: this.#doc, says, before: this.#past };
    this.#future = null;
    this.#doc = doc;
    this.#revision++;
  }

  /** What was tried last stays the same document when it is kept, so that it is not judged again. */
  edit(edits: readonly Edit[], says: string): void {
    const isTried = this.#preview !== null && JSON.stringify(edits) === JSON.stringify(this.#tried);
    this.change(isTried ? this.shown : applyEdits(this.#doc, edits), says);
  }

  /** Each preview starts from the kept document, so that a drag may come back to where it began. */
  preview(edits: readonly Edit[]): void {
    this.#preview = applyEdits(this.#doc, edits);
    this.#tried = edits;
  }

  /** Shows and judges a whole document that may become the next step; `change` with what is shown keeps it. */
  propose(doc: DesignFile): void {
    this.#preview = doc;
    this.#tried = [];
  }

  cancel(): void {
    this.#preview = null;
  }

  undo(): void {
    this.#preview = null;
    const step = this.#past;
    if (step === null) return;
    this.#future = { doc: this.#doc, says: step.says, before: this.#future };
    this.#past = step.before;
    this.#doc = step.doc;
    this.#revision++;
  }

  redo(): void {
    this.#preview = null;
    const step = this.#future;
    if (step === null) return;
    this.#past = { doc: this.#doc, says: step.says, before: this.#past };
    this.#future = step.before;
    this.#doc = step.doc;
    this.#revision++;
  }

  /** At most so many steps to either side. */
  history(most: number): History {
    const listed = (from: Step | null): readonly HistoryStep[] => {
      const steps: HistoryStep[] = [];
      for (let step = from; step !== null && steps.length < most; step = step.before)
        steps.push({ says: step.says, doc: step.doc });
      return steps;
    };
    return { past: listed(this.#past), future: listed(this.#future) };
  }

  /** Takes up the steps round the document that lies here, as after a reload. */
  resume({ past, future }: History): void {
    const linked = (steps: readonly HistoryStep[]): Step | null =>
      steps.reduceRight<Step | null>((before, { says, doc }) => ({ says, doc, before }), null);
    this.#past = linked(past);
    this.#future = linked(future);
  }

  /** Another build comes onto the sheet: its history starts anew. */
  open(doc: DesignFile): void {
    this.#preview = null;
    this.#past = null;
    this.#future = null;
    this.#newest.forget();
    this.#doc = doc;
    this.#revision++;
  }
}
