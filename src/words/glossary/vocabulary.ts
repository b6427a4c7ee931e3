// Terms in other languages, from the International Electrotechnical Vocabulary (IEC 60050) as it is publicly shown. Only what
// was seen there in the entry named stands here; every other term is left out.

export interface Entry {
  /** Number of the entry in IEC 60050. */
  readonly ref: string;
  readonly published: string;
  readonly de?: string;
  readonly fr?: string;
  readonly es?: string;
  readonly it?: string;
  readonly zh?: string;
  readonly ja?: string;
}

/** By the term's id. Source: IEC 60050, Electropedia, entry page of each number, International Electrotechnical Commission. */
export const vocabulary: Readonly<Record<string, Entry>> = {
  'creepage-distance': {
    ref: '471-01-04',
    published: '2007-05',
    de: 'Kriechweg, Kriechstrecke',
    fr: 'ligne de fuite',
    es: 'línea de fuga',
    it: 'linea di fuga',
    zh: '爬电距离',
    ja: '表面漏れ距離',
  },
};
