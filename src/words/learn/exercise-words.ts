// What an exercise asks and answers, in words: the question, the right answer with its reason, what a wrong number tells of.

import { inMillimetres } from '#words/text/length-unit.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { Exercise, Question, RightAnswer, Slip } from '#learn/exercise/exercise.ts';
import type { Marked } from '#learn/exercise/mark.ts';
import { answerWords } from '#words/text/answer-words.ts';
import { lengthDown, lengthUp } from '#words/text/number-words.ts';
import { pathSentence } from '#words/paths/path-words.ts';

export const exerciseTitle = (id: string): string => TITLES[id] ?? id;

const TITLES: Readonly<Record<string, string>> = {
  margins: 'The weakest way',
  plies: 'Plies and grades',
  leads: 'A lead in the margin',
};

/** What a pupil is told, with every figure that the questions need. */
export function givenWords({ verdict, doc }: Exercise): string {
  const stress = verdict.pairs[0]?.stress;
  const voltage = stress === undefined ? '' : `Working voltage ${stress.rms} V rms, ${stress.peak} V peak. `;
  const [primary, output] = [0, 2].map((layer) =>
    String(fieldAt(doc, `layers[${layer}].margins.left.width`)),
  );
  const plies = String(fieldAt(doc, 'layers[1].plies'));
  return `Primary on the mains, Output touched by the hand. ${voltage}Margins of the primary ${primary}, of the output ${output}, alike on both sides; ${plies} plies between them. Pollution degree 2, tracking group of the former IIIb. The section is to scale, lengths in millimetres; each ply of tape is 0.06 mm, blocks are wound margin tape, wires are enamelled, nothing is glued.`;
}

export const questionWords = (kind: Question['kind']): string => QUESTIONS[kind];

const QUESTIONS: Readonly<Record<Question['kind'], string>> = {
  asked: 'Which creepage distance is asked for reinforced insulation?',
  length: 'How long is the shortest way along surfaces from primary to output, through no ply?',
  grade: 'Which grade stands between primary and output?',
  verdict: 'Does the build meet what is asked, fall short of it, or is it not shown?',
  missing: 'How much is missing along surfaces?',
  'least-margin':
    'Both margins of the output are made alike. What is their least width, in steps of 0.05 mm?',
  'one-ply-less': 'One ply of the tape between the windings is left out. Which grade stands then?',
  'more-enamel': 'The primary’s wire gets enamel of grade 2. Which grade stands then?',
};

/** What stands beside the line to write on: a unit, or the words to choose from. */
export function answerForm({ answer }: Question): string {
  switch (answer.kind) {
    case 'length':
      return 'mm';
    case 'grade':
      return 'fill the ladder up to the grade';
    case 'verdict':
      return 'meets · falls short · not shown';
  }
}

export const rightAnswerWords = (answer: RightAnswer): string =>
  answer.kind === 'length'
    ? `${answer.value.toFixed(2)} mm`
    : answer.kind === 'grade'
      ? answer.value
      : answerWords(answer.value);

/** Why the answer is right, from the judgement's own reasons; empty where the figure says it all. */
export const reasonWords = (kind: Question['kind'], exercise: Exercise): string =>
  inMillimetres(() => reasonOf(kind, exercise));

function reasonOf(kind: Question['kind'], { verdict, pair }: Exercise): string {
  const found = verdict.pairs.find(({ between }) => between.join() === pair.join());
  const creepage = found?.required?.creepage;
  const way = found?.paths.find(({ metric, plies }) => metric === 'creepage' && plies === 0);
  switch (kind) {
    case 'asked':
      return creepage === undefined
        ? ''
        : `basic ${lengthUp(creepage.basic)} mm, for reinforced the double; clause 5.4.3, table 17`;
    case 'length':
      return way === undefined ? '' : pathSentence(way.legs);
    case 'missing':
      return way?.length == null || creepage?.reinforced == null
        ? ''
        : `${lengthUp(creepage.reinforced)} − ${lengthDown(way.length)}`;
    case 'least-margin':
      return 'the first step with which the way along surfaces is as long as asked; judged again with it';
    case 'one-ply-less':
      return 'plies count by their number and by what is shown of each';
    case 'grade':
      return way?.length == null || creepage?.basic == null || creepage.reinforced === null
        ? ''
        : `${lengthDown(way.length)} mm along surfaces; basic asks ${lengthUp(creepage.basic)}, reinforced ${lengthUp(creepage.reinforced)}`;
    case 'more-enamel':
      return 'enamel of any grade is no barrier between circuits';
    default:
      return '';
  }
}

export const slipWords = (slip: Slip['slip']): string => SLIPS[slip];

const SLIPS: Readonly<Record<Slip['slip'], string>> = {
  'one-margin-only': 'only one margin counted',
  'tape-only': 'only the height of the tape counted: straight through plies that hold',
  'basic-for-reinforced': 'the basic distance, not doubled for reinforced',
  'both-margins-for-one': 'both margins counted, where a lead in one of them leaves only the other',
};

/** `seat 7: 6 of 10; q2 3.08 mm: only one margin counted` */
export function markedLine({ pupil, points, of, questions }: Marked): string {
  const wrongs = questions.flatMap(({ question, given, isRight, slip }) =>
    isRight ? [] : [`${question.id} ${given ?? 'empty'}${slip === null ? '' : ` (${slipWords(slip)})`}`],
  );
  return `${pupil}: ${points} of ${of}${wrongs.length === 0 ? '' : `; ${wrongs.join(', ')}`}`;
}
