// One entry of the vocabulary as it was read: its number, when it was published, and the names in each language.

export interface Entry {
  /** Number of the entry in IEC 60050. */
  readonly ref: string;
  readonly published: string;
  /** The English name of the entry, which may be longer than ours. */
  readonly en: string;
  readonly de?: string;
  readonly fr?: string;
  readonly es?: string;
  readonly it?: string;
  readonly zh?: string;
  readonly ja?: string;
}
