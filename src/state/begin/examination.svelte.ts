// The answers given so far to the questions of an examination; what was passed over counts as don't know, and so does a
// figure that was left empty.

import { quantityField } from '#model/quantity/quantity-field.ts';
import { markedFields } from '#state/fields/marked-range.ts';
import type { KeptAnswers } from '#state/session/session-answers.ts';
import { questions, type AnswerField } from './questions.ts';

const FIELDS: ReadonlySet<string> = new Set(
  questions.flatMap(({ answers }) => answers.flatMap(({ fields = [] }) => fields.map(({ id }) => id))),
);

export class Examination {
  chosen: Readonly<Record<string, string>>;
  typed: Readonly<Record<string, string>>;

  constructor({ chosen, typed }: KeptAnswers = { chosen: {}, typed: {} }) {
    this.chosen = $state.raw(chosen);
    this.typed = $state.raw(typed);
  }

  /** Forgets all answers. */
  clear(): void {
    this.chosen = {};
    this.typed = {};
  }

  get answered(): number {
    return questions.filter(({ id }) => this.chosen[id] !== undefined).length;
  }

  choose(question: string, answer: string): void {
    this.chosen = { ...this.chosen, [question]: answer };
  }

  type(field: string, text: string): void {
    this.typed = { ...this.typed, [field]: text };
  }

  textOf(field: AnswerField): string {
    return this.typed[field.id] ?? '';
  }

  /** Why a typed figure cannot be taken; null where it can, or where nothing is typed. */
  faultOf(field: AnswerField): string | null {
    const text = this.textOf(field).trim();
    if (text === '' || field.kind === 'text') return null;
    if (field.kind === 'count') return /^[1-9]\d{0,2}$/.test(text) ? null : 'a whole number from 1';
    const figure = field.kind === 'voltage' ? markedFields(text).voltage : text;
    const found = quantityField(figure, {
      dimension: field.kind === 'voltage' ? 'voltsRms' : 'length',
      aboveZero: field.kind !== 'length',
      mayBeUnknown: false,
    });
    return found.kind === 'fault' ? found.expected : null;
  }

  /** Fields of chosen answers that cannot be taken yet. */
  get open(): readonly AnswerField[] {
    return questions
      .flatMap(({ id, answers }) => answers.find((answer) => answer.id === this.chosen[id])?.fields ?? [])
      .filter((field) => this.faultOf(field) !== null);
  }

  /** A question that was passed over counts as don't know. */
  given(question: string): string {
    return this.chosen[question] ?? 'unknown';
  }

  /** As typed, which of a voltage may be a marked range; null where nothing was. */
  figure(id: string): string | null {
    const text = (this.typed[id] ?? '').trim();
    return text === '' || !FIELDS.has(id) ? null : text;
  }
}

export type Given = Pick<Examination, 'given' | 'figure'>;
