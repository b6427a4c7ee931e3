// `draw FILE --out X.svg [--section NAME] [--stretch N] [--black]`: the section with the weakest paths;
// `--out X.dxf` gives it in millimetres for other drawing programs, `--out X.png` as pixels.

import { leadingSection } from '#words/verdict/pair-words.ts';
import { dxfOf } from '#drawing/dxf/dxf.ts';
import { printable } from '#words/text/printable.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import { judge, type Judgement } from '#judge/judging/judge.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { refused, type Outcome } from '#cli/line/outcome.ts';
import { pngOf } from '#cli/files/png.ts';
import { writeWhole } from '#cli/files/write-whole.ts';

const MOST_STRETCH = 8;

export function drawFile(words: readonly string[]): Outcome {
  const given = readArguments(words, { out: 'value', section: 'value', stretch: 'value', black: 'switch' });
  if (given.kind === 'wrong') return refused(`draw: ${given.says}.`);
  const { files, options } = given;
  const [file] = files;
  const out = options.get('out');
  if (file === undefined || files.length > 1)
    return refused('draw: name one design file, or - for standard input.');
  if (out === undefined)
    return refused('draw: say where to with --out X.svg, or --out - for standard output.');
  const stretch = Number(options.get('stretch') ?? 1);
  if (!(stretch >= 1 && stretch <= MOST_STRETCH))
    return refused(`draw: --stretch is a number from 1 to ${MOST_STRETCH}.`);
  const loaded = loadDesign(file);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const judgement = judge(loaded.design);
  const section = options.get('section') ?? leadingSection(judgement.verdict, judgement.sections);
  const scene = sceneOf(loaded.design, judgement, section);
  if (scene === null)
    return refused(`draw: there is no section ${printable(section)}; there are ${sectionNames(judgement)}.`);
  if (/\.dxf$/i.test(out)) return writeWhole(out, dxfOf(scene), 'draw');
  const theme = options.has('black') ? 'print' : 'light';
  const svg = svgOf(scene, { theme, radialStretch: stretch, heading: loaded.design.title });
  return /\.png$/i.test(out) ? writePng(out, svg) : writeWhole(out, `${svg}\n`, 'draw');
}

function writePng(out: string, svg: string): Outcome {
  const png = pngOf(svg);
  return png.kind === 'none' ? refused(`draw: no PNG: ${png.why}.`) : writeWhole(out, png.bytes, 'draw');
}

const sectionNames = ({ sections }: Judgement): string => sections.map(({ name }) => `"${name}"`).join(', ');
