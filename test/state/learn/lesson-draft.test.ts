// A lesson written on the page: read by the schema like every other, proved by the judge, handed on by a link and read back.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import type { Lesson } from '#learn/lesson/lesson-schema.ts';
import { LessonDraft, lessonOfLink, lessonOfText } from '#state/learn/lesson-draft.svelte.ts';
import type { Thread } from '#state/threads/thread.ts';

const { build } = JSON.parse(readFileSync('static/lessons/grades.json', 'utf8')) as Lesson;

/** No thread to be had: all is judged here. */
const away = {
  ask: () => ({ outcome: Promise.resolve({ kind: 'away' }), stop: () => undefined }),
} as unknown as Thread;

function written(): LessonDraft {
  const draft = new LessonDraft(build, away);
  Object.assign(draft.entries, {
    title: 'Plies again',
    short: 'plies again',
    asks: 'What does one ply make?',
    explains: 'One ply is one barrier.',
    task: 'Make it three.',
    hints: 'Look at the tape.\nThree plies.',
    solution: 'layers[1].plies = 3',
    point: 'layers[1].plies = 1',
    learnt: 'Three plies are reinforced.',
    practice: 'common practice',
  });
  return draft;
}

const lessonOf = (draft: LessonDraft): Lesson => {
  if (draft.read.kind === 'bad') throw new Error(draft.read.faults[0]?.says);
  return draft.read.lesson;
};

describe('a lesson written on the page', () => {
  it('should name what is missing by its field until it is whole', () => {
    const { read } = new LessonDraft(build, away);
    expect(read.kind === 'bad' && read.faults.map(({ field }) => field)).toEqual(
      expect.arrayContaining(['title', 'asks', 'solution', 'learnt.says']),
    );
    expect(lessonOf(written())).toMatchObject({ id: 'plies-again', pair: ['pri', 'out'] });
    expect(lessonOf(written()).task.fields).toEqual(['layers[1].plies']);
  });

  it('should be proved by the judge: start, solution and point', async () => {
    const draft = written();
    expect(await draft.proved(lessonOf(draft))).toEqual([]);
    draft.entries.solution = 'layers[1].plies = 1';
    expect(await draft.proved(lessonOf(draft))).toEqual(['solution']);
    Object.assign(draft.entries, { solution: 'layers[1].plies = 3', point: 'layers[1].plies = 4' });
    expect(await draft.proved(lessonOf(draft))).toEqual(['point']);
  });

  it('should come out of its link as it went in', async () => {
    const draft = written();
    const place = await draft.place;
    const found = await lessonOfLink(place.replace('given/', ''));
    expect(found).toEqual({ kind: 'lesson', lesson: lessonOf(draft) });
  });

  it('should refuse a damaged link and a file that is no lesson, by its field', async () => {
    expect(await lessonOfLink('%%%')).toMatchObject({ kind: 'refused' });
    expect(lessonOfText('{')).toMatchObject({ kind: 'refused' });
    expect(lessonOfText('{"format":"layerwright-lesson/1"}')).toMatchObject({ kind: 'bad' });
  });
});
