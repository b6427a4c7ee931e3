// What leaves the tool on paper or as a file: the report, the winder's sheet, the figures, the drawing of a section.
// Only its own page asks for it, so that the first script of the page need not carry it.

import { inMillimetres } from '#words/text/length-unit.ts';
import { studyOf } from '#judge/study.ts';
import { csvOf } from '#papers/csv.ts';
import { dxfOf } from '#drawing/dxf/dxf.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { winderSheet } from '#papers/html/winder-sheet.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import type { FieldSearch } from '#state/searches/field-search.svelte.ts';
import type { Workspace } from '#state/document/workspace.svelte.ts';
import { designText, fileName, saveFile } from '#state/storage/files.ts';
import { stillJudging } from './still-judging.ts';
import { pngOf } from './svg-to-png.ts';

export const PAPERS = ['report', 'winder'] as const;
export type PaperKind = (typeof PAPERS)[number];

export const DRAWINGS = ['svg', 'png', 'dxf'] as const;
export type DrawingKind = (typeof DRAWINGS)[number];

/** Outward scale over axial scale. */
export const STRETCHES = [1, 2, 4, 8] as const;

export class Papers {
  kind: PaperKind = $state('report');
  /** Black ink on white paper instead of colour. */
  isBlack = $state(false);
  stretch: number = $state(1);
  #section: string | null = $state(null);
  readonly #workspace: Workspace;
  readonly #field: FieldSearch;

  constructor(workspace: Workspace, field: FieldSearch) {
    [this.#workspace, this.#field] = [workspace, field];
  }

  /** The section to draw: the one on the sheet until another is picked. */
  get section(): string {
    const picked = this.#section;
    return picked !== null && this.#workspace.sections.includes(picked) ? picked : this.#workspace.section;
  }

  set section(name: string) {
    this.#section = name;
  }

  /** A wrong entry stands in the build: all papers tell its last state that could be judged. */
  get isOfLastGood(): boolean {
    return this.#workspace.editor.faults.length > 0;
  }

  /** The picked paper as one HTML file; null while nothing could be judged. */
  readonly html: string | null = $derived.by(() => {
    const { judged } = this.#workspace.editor;
    if (judged === null) return null;
    const { design, doc } = judged;
    const field = this.#field.fineOf(design);
    const judgement = studyOf(design, judged.judgement);
    const black = this.isBlack;
    return inMillimetres(() =>
      this.kind === 'winder'
        ? winderSheet({ design, judgement, black })
        : reportHtml({ design, judgement, designText: designText(doc), black, field }),
    );
  });

  /** For what leaves the page at once, which must not be of an older state. */
  htmlNow(): string | null {
    return this.#workspace.editor.judgedNow === null ? stillJudging() : this.html;
  }

  async saveHtml(): Promise<void> {
    await this.#workspace.editor.judgedSoon();
    const { html } = this;
    if (html === null || this.#workspace.editor.judgedNow === null) return;
    const name = this.kind === 'winder' ? `${this.#title} winding sheet` : this.#title;
    saveFile(html, fileName(name, 'html'), 'text/html');
  }

  async saveFigures(): Promise<void> {
    const judged = await this.#workspace.editor.judgedSoon();
    if (judged === null) return;
    const csv = inMillimetres(() => csvOf(judged.design, judged.judgement.verdict));
    saveFile(csv, fileName(this.#title, 'csv'), 'text/csv');
  }

  /** Null where it was saved; else why not. */
  async saveDrawing(kind: DrawingKind): Promise<string | null> {
    const scene = await this.#scene();
    if (scene === null) return 'There is no section to draw.';
    const name = fileName(`${this.#title} ${this.section}`, kind);
    if (kind === 'dxf') saveFile(dxfOf(scene), name, 'image/vnd.dxf');
    else if (kind === 'svg') saveFile(`${this.#svg(scene)}\n`, name, 'image/svg+xml');
    else {
      const picture = await pngOf(this.#svg(scene));
      if (picture === null)
        return 'This browser could not make a PNG of the drawing; the SVG holds the same.';
      saveFile(picture, name, 'image/png');
    }
    return null;
  }

  get #title(): string {
    return this.#workspace.design?.title ?? '';
  }

  async #scene(): Promise<Scene | null> {
    const judged = await this.#workspace.editor.judgedSoon();
    if (judged === null) return null;
    const { pair } = this.#workspace;
    return inMillimetres(() =>
      sceneOf(judged.design, judged.judgement, this.section, { pair: pair?.between ?? null }),
    );
  }

  #svg(scene: Scene): string {
    const theme = this.isBlack ? 'print' : 'light';
    return inMillimetres(() => svgOf(scene, { theme, radialStretch: this.stretch, heading: this.#title }));
  }
}
