// The answers of an examination, kept for as long as the tab lasts: a reload or a way back finds them again.

const KEY = 'layerwright-examination';

export interface KeptAnswers {
  readonly chosen: Readonly<Record<string, string>>;
  readonly typed: Readonly<Record<string, string>>;
}

const NONE: KeptAnswers = { chosen: {}, typed: {} };

export function keepAnswers(answers: KeptAnswers): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify(answers));
  } catch {
    // blocked storage: the answers last as long as the page
  }
}

/** None where nothing was kept, or nothing that can be read. */
export function keptAnswers(): KeptAnswers {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? '{}');
    const { chosen, typed } = kept as Partial<Record<keyof KeptAnswers, unknown>>;
    return { chosen: textsOf(chosen), typed: textsOf(typed) };
  } catch {
    return NONE;
  }
}

const textsOf = (found: unknown): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(found ?? {}).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
