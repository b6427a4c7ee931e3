// The build on this tab's sheet as it was left, with the steps back and forward, as many as the tab's storage takes: written
// at the last moment, when nothing that must be waited for would still be done.

import { isSheetSafe } from '#state/storage/import-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { History, HistoryStep } from '#state/document/editor.svelte.ts';

const KEY = 'layerwright-steps';
/** Characters; browsers give a tab about five million. */
const MOST = 2_000_000;

interface Kept {
  readonly id: string;
  /** When it was left, ms. */
  readonly left: number;
  /** The state that the steps lead to and from. */
  readonly doc: DesignFile;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
}

/** As it was left. */
export type LeftBuild = Omit<Kept, 'id'>;

/** `id`: of a kept build, or of an invented one that was not kept yet. */
export function keepSteps(id: string | null, doc: DesignFile, { past, future }: History): void {
  try {
    if (id === null || past.length + future.length === 0) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, written(id, JSON.stringify(doc), past, future, Date.now()));
  } catch {
    // full or blocked storage: a reload begins a new history
  }
}

/** Null where nothing was kept of this build. */
export function keptSteps(id: string): LeftBuild | null {
  try {
    const kept = JSON.parse(sessionStorage.getItem(KEY) ?? 'null') as Partial<Kept> | null;
    if (kept?.id !== id || typeof kept.left !== 'number' || !isSheetSafe(kept.doc)) return null;
    return { left: kept.left, doc: kept.doc, past: stepsOf(kept.past), future: stepsOf(kept.future) };
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
  now: number,
): string {
  let room = MOST - at.length;
  const fitting = (steps: readonly HistoryStep[]): readonly string[] => {
    const texts: string[] = [];
    for (const { says, doc } of steps) {
      const text = JSON.stringify({ says, doc });
      room -= text.length;
      if (room < 0) break;
      texts.push(text);
    }
    return texts;
  };
  const [before, after] = [fitting(past), fitting(future)];
  const named = `"id":${JSON.stringify(id)},"left":${now},"doc":${at}`;
  return `{${named},"past":[${before.join(',')}],"future":[${after.join(',')}]}`;
}

function stepsOf(found: unknown): readonly HistoryStep[] {
  if (!Array.isArray(found)) return [];
  const isStep = (step: unknown): step is HistoryStep =>
    isRecord(step) && typeof step['says'] === 'string' && isSheetSafe(step['doc']);
  // a damaged step cannot be gone back to, nor what lies behind it
  const damaged = found.findIndex((step) => !isStep(step));
  return found.slice(0, damaged === -1 ? found.length : damaged) as readonly HistoryStep[];
}

const isRecord = (found: unknown): found is Readonly<Record<string, unknown>> =>
  typeof found === 'object' && found !== null;
