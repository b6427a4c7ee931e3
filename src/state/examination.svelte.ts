// The answers given so far to the questions of an examination; what was passed over counts as don't know.

import { quantityField } from '#model/quantity-field.ts';
import { questions, type AnswerField } from './questions.ts';

export class Examination {
  chosen: Readonly<Record<string, string>> = $state.raw({});
  typed: Readonly<Record<string, string>> = $state.raw({});

  get answered(): number {
    return questions.filter(({ id }) => this.chosen[id] !== undefined).length;
  }

  choose(question: string, answer: string): void {
    this.chosen = { ...this.chosen, [question]: answer };
  }

  type(field: string, text: string): void {
    this.typed = { ...this.typed, [field]: text };
  }

  /** Why a typed figure cannot be taken; null where it can. */
  faultOf(field: AnswerField): string | null {
    const text = this.textOf(field);
    if (field.kind === 'text') return text.trim() === '' ? 'a few words' : null;
    if (field.kind === 'count') return /^[1-9]\d{0,2}$/.test(text.trim()) ? null : 'a whole number from 1';
    const dimension = field.kind === 'length' ? 'length' : 'voltsRms';
    const found = quantityField(text, { dimension, aboveZero: false, mayBeUnknown: false });
    return found.kind === 'fault' ? `a ${field.kind} such as ${field.start}` : null;
  }

  textOf(field: AnswerField): string {
    return this.typed[field.id] ?? field.start;
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

  figure(field: string): string {
    const known = questions.flatMap(({ answers }) => answers.flatMap(({ fields = [] }) => fields));
    const found = known.find(({ id }) => id === field);
    return this.typed[field] ?? found?.start ?? '';
  }
}

export type Given = Pick<Examination, 'given' | 'figure'>;
