// The steps back and forward of the build on this tab's sheet, kept over a reload, as many as the tab's storage takes.
// They belong to one state of one build: where another was kept meanwhile they are let go.

import type { DesignFile } from '#model/schema.ts';
import type { History, HistoryStep } from './editor.svelte.ts';

const KEY = 'layerwright-steps';
/** Characters; browsers give a tab about five million. */
const MOST = 2_000_000;

interface Kept {
  readonly id: string;
  /** The state that the steps lead to and from, as text. */
  readonly at: string;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
}

export function keepSteps(id: string | null, doc: DesignFile, { past, future }: History): void {
  try {
    if (id === null || past.length + future.length === 0) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, written(id, JSON.stringify(doc), past, future));
  } catch {
    // full or blocked storage: a reload begins a new history
  }
}

/** Null where nothing was kept of this build in this state. */
export function keptSteps(id: string, doc: DesignFile): History | null {
  try {
    const kept = JSON.parse(sessionStorage.getItem(KEY) ?? 'null') as Partial<Kept> | null;
    if (kept?.id !== id || kept.at !== JSON.stringify(doc)) return null;
    return { past: stepsOf(kept.past), future: stepsOf(kept.future) };
  } catch {
    return null;
  }
}

/** Steps nearest to the present first; those that no longer fit are the oldest. */
function written(
  id: string,
  at: string,
  past: readonly HistoryStep[],
  future: readonly HistoryStep[],
): string {
  let left = MOST - at.length;
  const fitting = (steps: readonly HistoryStep[]): readonly string[] => {
    const texts: string[] = [];
    for (const { says, doc } of steps) {
      const text = JSON.stringify({ says, doc });
      left -= text.length;
      if (left < 0) break;
      texts.push(text);
    }
    return texts;
  };
  const [before, after] = [fitting(past), fitting(future)];
  const named = `"id":${JSON.stringify(id)},"at":${JSON.stringify(at)}`;
  return `{${named},"past":[${before.join(',')}],"future":[${after.join(',')}]}`;
}

function stepsOf(found: unknown): readonly HistoryStep[] {
  if (!Array.isArray(found)) return [];
  return found.filter(
    (step): step is HistoryStep =>
      typeof step === 'object' &&
      step !== null &&
      typeof (step as HistoryStep).says === 'string' &&
      typeof (step as HistoryStep).doc === 'object',
  );
}
