// The stepped picture of the README: a demo build taken down layer by layer, judged at every step, mended at the end. Drawn and
// judged by what the tool ships; `npm run picture` writes it anew. Who asks for less motion sees the end of it.

import { readFileSync } from 'node:fs';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf, svgPage } from '#drawing/svg/svg.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';
import { answerWords, capitalised } from '#words/text/answer-words.ts';
import { escapeText } from '#words/text/escape-text.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { headline, leadingSection } from '#words/verdict/pair-words.ts';

const DEMO = 'static/demos/greenhouse-timer.json';
const SECONDS_A_STEP = 4;
const WIDTH = 960;
const WORDS = { top: 26, line: 19, signs: 128 } as const;

interface DemoFile {
  workingVoltages: object[];
  layers: { margins?: { left: { width: string } }; inset?: unknown }[];
  windings: { leads: { finish: { sleeve: { into: string } } } }[];
}

/** What is done at a step, and the file then. */
interface Step {
  readonly says: string;
  readonly file: DemoFile;
}

export interface Frame {
  readonly says: string;
  readonly verdict: string;
  readonly headline: string;
  readonly svg: string;
}

const demo = (): DemoFile => JSON.parse(readFileSync(DEMO, 'utf8')) as DemoFile;

function upTo(layers: number): DemoFile {
  const file = demo();
  return { ...file, layers: file.layers.slice(0, layers) };
}

/** Margin, tape and sleeve as they should have been wound. */
function mended(): DemoFile {
  const file = demo();
  const [, tape, output, cut] = file.layers;
  output!.margins!.left.width = '3 mm';
  delete cut!.inset;
  if (tape === undefined) throw new Error('the demo has no tape under its output');
  file.windings[1]!.leads.finish.sleeve.into = '3 mm';
  return file;
}

/** The figure that the verdict asks for last. */
function measured(): DemoFile {
  const file = mended();
  const [known] = file.workingVoltages;
  return { ...file, workingVoltages: [...file.workingVoltages, { ...known, between: ['aux', 'out'] }] };
}

const STEPS: readonly Step[] = [
  { says: '1  The empty former, and the circuits by their roles', file: upTo(0) },
  { says: '2  The primary between its margins, three plies over it', file: upTo(2) },
  { says: '3  The output as it was found: one margin is short', file: upTo(3) },
  { says: '4  Tape cut short, the auxiliary, tape: all that was wound', file: upTo(6) },
  { says: '5  Margin, tape and sleeve as they should have been', file: mended() },
  { says: '6  The voltage that was not known, measured', file: measured() },
];

export const frames = (): readonly Frame[] => STEPS.map(frameOf);

function frameOf({ says, file }: Step, k: number): Frame {
  const read = readDesign(file, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults.map((fault) => fault.says).join('\n'));
  const { design } = read;
  const judgement = study(design);
  const { verdict, sections } = judgement;
  const scene = sceneOf(design, judgement, leadingSection(verdict, sections));
  if (scene === null) throw new Error(`step ${k + 1} has no section`);
  return {
    says,
    verdict: `${capitalised(answerWords(verdict.verdict))}.`,
    headline: headline(verdict, circuitLooks(design.circuits)),
    svg: svgOf(scene, { width: WIDTH, prefix: `s${k}-`, caption: false }),
  };
}

/** All steps in one drawing, one after the other. */
export function picture(all: readonly Frame[]): string {
  const [ink, sheet] = ['#1c2321', '#f8f9f7'];
  const lines = Math.max(...all.map((frame) => linesOf(frame).length));
  const top = WORDS.top + lines * WORDS.line;
  const height = top + Math.max(...all.map(({ svg }) => Number(/height="(\d+)"/.exec(svg)![1])));
  const content = [
    `<title>${escapeText(all.map(({ says, verdict }) => `${says}: ${verdict}`).join(' '))}</title>`,
    `<style>${motion(all.length)}</style>`,
    `<rect width="${WIDTH}" height="${height}" fill="${sheet}"/>`,
    ...all.map((frame, k) => group(frame, k, all.length, top, ink)),
  ];
  return `${svgPage({ width: WIDTH, height, viewBox: `0 0 ${WIDTH} ${height}` }, content.join('\n'))}\n`;
}

function group(frame: Frame, k: number, count: number, top: number, ink: string): string {
  const [first, ...rest] = linesOf(frame).map(
    (line, at) =>
      `<text x="20" y="${WORDS.top + at * WORDS.line}" fill="${ink}" font-size="${at === 0 ? 16 : 14}"${
        at === 0 ? ' font-weight="600"' : ''
      }>${escapeText(line)}</text>`,
  );
  const drawn = frame.svg.replace('<svg ', `<svg y="${top}" `);
  const last = k === count - 1 ? ' last' : '';
  return `<g class="step${last}" style="animation-delay:${k * SECONDS_A_STEP}s">${first}${rest.join('')}\n${drawn}</g>`;
}

/** What is done, then verdict and reason in lines of a bearable length. */
function linesOf({ says, verdict, headline: why }: Frame): readonly string[] {
  const lines = [says];
  for (const word of `${verdict} ${why}`.split(' ')) {
    const line = lines.at(-1)!;
    if (lines.length === 1 || line.length + word.length >= WORDS.signs) lines.push(word);
    else lines[lines.length - 1] = `${line} ${word}`;
  }
  return lines;
}

function motion(count: number): string {
  const share = 100 / count;
  return [
    `.step{opacity:0;animation:step ${count * SECONDS_A_STEP}s infinite}`,
    `@keyframes step{0%{opacity:1}${(share - 0.01).toFixed(2)}%{opacity:1}${share.toFixed(2)}%{opacity:0}100%{opacity:0}}`,
    '@media (prefers-reduced-motion:reduce){.step{animation:none}.last{opacity:1}}',
    '@media print{.step{animation:none}.last{opacity:1}}',
  ].join('');
}
