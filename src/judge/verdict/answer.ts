// The three answers that a judgement gives.

export type Answer = 'meets' | 'falls-short' | 'not-shown';
