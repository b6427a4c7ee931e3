// What lies around the sheet: which page is open, the builds that come and go, and what is said about them.

import { inMillimetres } from '#words/text/length-unit.ts';
import { createContext } from 'svelte';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Workspace } from '#state/document/workspace.svelte.ts';
import type { KeptBuild } from '#state/storage/build-store.ts';
import { firstDemo, type Demo } from '#state/begin/demos.ts';
import { designText, fileName, readFile, saveFile } from '#state/storage/files.ts';
import { rememberSheet } from '#state/session/last-sheet.ts';
import type { Autosave } from '#state/session/autosave.svelte.ts';
import { BooksSearch } from '#state/searches/books-search.svelte.ts';
import { FieldSearch } from '#state/searches/field-search.svelte.ts';
import { Comparing } from '#state/searches/comparing.svelte.ts';
import { MendSearch } from '#state/searches/mend-search.svelte.ts';
import { SeriesRun } from '#state/searches/series-run.svelte.ts';
import { SpreadSearch } from '#state/searches/spread-search.svelte.ts';
import { judgeErrand } from '#state/judging/judge-errand.ts';
import type { Threads } from '#state/threads/threads.ts';
import { ManyBuilds } from '#state/searches/many-builds.svelte.ts';
import { openable, openableJson, type Openable } from '#state/storage/import-design.ts';
import type { Pages } from './pages.svelte.ts';
import { Repair } from './repair.svelte.ts';
import { PhotoDesk } from '#state/photo/photo-desk.svelte.ts';
import { withoutPictures } from '#state/photo/photo-record.ts';
import { NewVersion } from '#state/storage/new-version.svelte.ts';
import { readFragment, SHARE_PREFIX, shareFragment } from '#state/storage/share-link.ts';

/** What a kept build is known by. */
type Grown = Pick<KeptBuild, 'id' | 'version'>;

const PICTURE_NAME = /\.(?:jpe?g|png|webp)$/i;

export class App {
  readonly workspace: Workspace;
  readonly autosave: Autosave;
  readonly pages: Pages;
  readonly photos: PhotoDesk;
  readonly threads: Threads;
  readonly newVersion = new NewVersion();
  readonly many: ManyBuilds;
  readonly field: FieldSearch;
  readonly mending: MendSearch;
  readonly comparing: Comparing;
  readonly spreading: SpreadSearch;
  readonly series: SeriesRun;
  readonly books: BooksSearch;
  /** What went wrong with the last thing that was opened; null where nothing did. */
  refusal: string | null = $state(null);
  /** The build that lies here came with the page; null for one that somebody brought or began. */
  #demo: string | null = $state(firstDemo.id);
  /** The build that is being put right before it can lie on the sheet. */
  repair: Repair | null = $state.raw(null);
  #link: { readonly doc: DesignFile; readonly text: string } | null = $state.raw(null);

  constructor(workspace: Workspace, autosave: Autosave, pages: Pages, threads: Threads) {
    this.workspace = workspace;
    this.autosave = autosave;
    this.pages = pages;
    this.threads = threads;
    this.many = new ManyBuilds(judgeErrand(threads.errands));
    this.field = new FieldSearch(threads.errands, (design, judgement) =>
      workspace.editor.takeOver(design, judgement),
    );
    this.mending = new MendSearch(threads.errands);
    this.comparing = new Comparing(workspace.editor, judgeErrand(threads.errands));
    this.spreading = new SpreadSearch(threads.sharing);
    this.series = new SeriesRun(judgeErrand(threads.errands));
    this.books = new BooksSearch(threads.errands);
    this.photos = new PhotoDesk(workspace.editor);
  }

  async layOut(doc: DesignFile, kept: Grown | null = null, keepAtOnce = false): Promise<void> {
    await this.lay(doc, kept, keepAtOnce);
    this.pages.go('sheet');
  }

  /** Lays a build on the sheet and stays on the page that is open. */
  async lay(doc: DesignFile, kept: Grown | null = null, keepAtOnce = false): Promise<void> {
    await this.autosave.open(doc, kept, keepAtOnce);
    this.#demo = null;
    this.refusal = null;
    this.hideLink();
    const { editor, selection } = this.workspace;
    selection.startAt(this.workspace.verdict);
    // looks at the worst place once it is known, unless one looks elsewhere by then
    void editor.judgedSoon().then((judged) => {
      if (judged?.doc === doc && selection.isAtStart) selection.startAt(judged.judgement.verdict);
    });
  }

  /** It came with the page and was not changed: whatever was worked on is its owner's. */
  get isInvented(): boolean {
    return this.#demo !== null && this.autosave.status.kind === 'untouched';
  }

  /** What this browser kept may have been damaged since: it passes the same reading as a file. */
  async openKept(kept: KeptBuild): Promise<void> {
    const found = openableJson(kept.doc);
    if (found.kind === 'build') await this.layOut(found.doc, kept);
    else this.#refuse(found, kept);
  }

  /** Lays the build on the sheet that has been put right. */
  async layRepaired(): Promise<void> {
    const { repair } = this;
    if (repair?.doc == null) return;
    const { doc, kept } = repair;
    this.#endRepair();
    await this.layOut(doc, kept, true);
  }

  putRepairAway(): void {
    this.#endRepair();
    this.pages.go('open');
  }

  #endRepair(): void {
    this.repair = null;
    Repair.forget();
  }

  async openDemo(demo: Demo): Promise<void> {
    await this.layDemo(demo);
    this.pages.go('sheet');
  }

  async layDemo(demo: Demo): Promise<void> {
    await this.lay(await demo.load());
    rememberSheet(`demo:${demo.id}`);
    this.#demo = demo.id;
  }

  async openFile(file: File): Promise<void> {
    await this.#take(await readFile(file));
  }

  /** What was dropped on the page: pictures go to the photographs, a design file is laid out, many are judged in a row. */
  async takeFiles(files: readonly File[]): Promise<void> {
    const pictures = files.filter(({ type, name }) => type.startsWith('image/') || PICTURE_NAME.test(name));
    const [file] = files;
    if (pictures.length > 0) {
      this.pages.go('photographs');
      await this.photos.take(pictures);
    } else if (files.length > 1) {
      this.pages.go('many');
      await this.many.take(files);
    } else if (file !== undefined) await this.openFile(file);
  }

  async openText(text: string): Promise<void> {
    await this.#take(openable(text));
  }

  /** Opens the build that the address holds, if it holds one. */
  async openAddress(): Promise<boolean> {
    const fragment = location.hash.slice(1);
    if (!fragment.startsWith(SHARE_PREFIX)) return false;
    await this.#take(await readFragment(fragment));
    return true;
  }

  async showLink(): Promise<void> {
    const { doc } = this.workspace.editor;
    const fragment = await shareFragment(withoutPictures(doc));
    this.#link = { doc, text: `${location.href.split('#')[0]}#${fragment}` };
  }

  hideLink(): void {
    this.#link = null;
  }

  /** The link to this build, while it is shown; a build that was changed since is in no link. */
  get link(): string | null {
    return this.#link?.doc === this.workspace.editor.doc ? this.#link.text : null;
  }

  save(): void {
    const { doc } = this.workspace.editor;
    saveFile(designText(doc), fileName(doc.title, 'json'), 'application/json');
  }

  /** From now on printing gives the report in place of the screen; returns what ends that. */
  async printReports(): Promise<() => void> {
    const [{ printPapers }, { stillJudging }, { reportHtml }, { studyOf }] = await Promise.all([
      import('#state/exports/print-papers.ts'),
      import('#state/exports/still-judging.ts'),
      import('#papers/html/report/report.ts'),
      import('#judge/study.ts'),
    ]);
    return printPapers(() => {
      const { judgedNow: judged } = this.workspace.editor;
      if (judged === null) return stillJudging();
      const { design, doc } = judged;
      const judgement = studyOf(design, judged.judgement);
      return inMillimetres(() => reportHtml({ design, judgement, designText: designText(doc) }));
    });
  }

  async #take(found: Openable): Promise<void> {
    if (found.kind === 'build') await this.layOut(found.doc, null, true);
    else this.#refuse(found, null);
  }

  /** With faults it is put right first; what is no design file is refused. */
  #refuse(found: Exclude<Openable, { readonly kind: 'build' }>, kept: KeptBuild | null): void {
    this.refusal = found.kind === 'refused' ? found.says : null;
    if (found.kind === 'faulty') this.repair = new Repair(found.json, kept);
    this.pages.go(found.kind === 'faulty' ? 'repair' : 'open');
  }
}

export const [useApp, provideApp] = createContext<App>();
