// Whether the program stands a file: it is refused in bounded words, or read, judged and told in every way without a figure that
// is none. Gives back what it did not stand.

import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { sketch } from '#judge/judging/sketch.ts';
import { studyOf } from '#judge/study.ts';
import { readDesignText } from '#model/read/read-design-text.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { svgOf } from '#drawing/svg/svg.ts';
import { csvOf } from '#papers/csv.ts';
import { reportHtml } from '#papers/html/report/report.ts';
import { verdictText } from '#words/verdict/verdict-text.ts';

const LONGEST_SAYS = 600;

export interface Stood {
  readonly kind: 'refused' | 'judged';
  readonly complaints: readonly string[];
}

/** `inFull`: all papers are made too. Throws what the program throws. */
export function stands(text: string, inFull: boolean): Stood {
  const read = readDesignText(text, knownIds);
  if (read.kind === 'bad') {
    const complaints = read.faults.flatMap(({ says, expected }) => [
      ...(says.length > LONGEST_SAYS ? [`says too much: ${says}`] : []),
      ...(expected === '' ? [`says nothing of what was expected: ${says}`] : []),
    ]);
    return {
      kind: 'refused',
      complaints: read.faults.length === 0 ? ['refused without a word'] : complaints,
    };
  }
  const { design } = read;
  const judgement = judge(design);
  const told: unknown[] = [judgement.verdict, judgement.sections, sketch(design).sections];
  if (inFull) {
    const study = studyOf(design, judgement);
    told.push(study.stress, judgement.turns.get('plain'));
    const texts = [
      verdictText(design, judgement.verdict),
      csvOf(design, judgement.verdict),
      reportHtml({ design, judgement: study, designText: text }),
      ...judgement.sections.slice(0, 2).map(({ name }) => {
        const scene = sceneOf(design, judgement, name);
        return scene === null ? '' : svgOf(scene);
      }),
    ];
    const odd = texts.flatMap(
      (made) => /.{0,60}\b(?:NaN|-?Infinity|undefined)\b.{0,20}/.exec(made)?.[0] ?? [],
    );
    return {
      kind: 'judged',
      complaints: [...notFinite(told), ...odd.filter((line) => !text.includes(line))],
    };
  }
  return { kind: 'judged', complaints: notFinite(told) };
}

/** Paths of numbers that are none. */
function notFinite(value: unknown): readonly string[] {
  const found: string[] = [];
  const walk = (node: unknown, path: string): void => {
    if (typeof node === 'number' && !Number.isFinite(node)) found.push(`${path} is ${node}`);
    if (typeof node !== 'object' || node === null || found.length > 3) return;
    for (const [key, inner] of Object.entries(node)) walk(inner, `${path}.${key}`);
  };
  walk(value, '');
  return found;
}
