// What is wrong with a design file, told so that its author can mend it: where, what was found, what was expected.

/** One fault. `field` is a path such as `layers[3].plies`, empty for the file as a whole. */
export interface BadInput {
  readonly field: string;
  /** What stands there, shortened to 120 characters. */
  readonly found: string;
  readonly expected: string;
  /** The whole as one sentence. */
  readonly says: string;
}
