// What the library makes of a judgement: the drawn section, the report, the verdict in words. All text, nothing is written.

import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { verdictText } from '#words/verdict/verdict-text.ts';
import { leadingSection } from '#words/verdict/pair-words.ts';
import { Judged } from './judged.ts';

export interface DrawOptions {
  /** Name of the section, one of `verdict.pairs[].paths[].section`; left out: where the worst pair's path runs. */
  readonly section?: string;
  /** Black ink on white paper instead of colour. */
  readonly black?: boolean;
  /** Greatest width in pixels. */
  readonly width?: number;
}

export interface ReportOptions {
  readonly black?: boolean;
  /** The design file's text, to be enclosed so that the report opens as a design. */
  readonly designText: string;
}

/**
 * The section with the weakest paths as one self-contained SVG document.
 *
 * @throws RangeError where the section has no such name
 */
export function drawSection(judged: Judged, options: DrawOptions = {}): string {
  const { design, judgement } = Judged.inside(judged);
  const section = options.section ?? leadingSection(judgement.verdict, judgement.sections);
  const scene = sceneOf(design, judgement, section);
  if (scene === null) throw new RangeError(`there is no section ${section}`);
  const width = options.width === undefined ? {} : { width: options.width };
  return svgOf(scene, {
    theme: options.black === true ? 'print' : 'light',
    heading: design.title,
    ...width,
  });
}

/** The self-contained report as one HTML document, which prints to PDF. */
export const report = (judged: Judged, { designText, black = false }: ReportOptions): string =>
  reportHtml({ ...Judged.inside(judged), designText, black });

/** The verdict in words, as `judge` prints it. */
export function tell(judged: Judged): string {
  const { design, judgement } = Judged.inside(judged);
  return verdictText(design, judgement.verdict);
}
