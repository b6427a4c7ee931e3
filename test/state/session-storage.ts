// A tab's storage for tests outside a browser: stubbed before each, empty, and what it holds to look at.

import { afterEach, beforeEach, vi } from 'vitest';

export function stubSession(): ReadonlyMap<string, string> & { set: (key: string, text: string) => unknown } {
  const held = new Map<string, string>();
  beforeEach(() => {
    held.clear();
    vi.stubGlobal('sessionStorage', {
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, text: string) => void held.set(key, text),
      removeItem: (key: string) => void held.delete(key),
    });
  });
  afterEach(() => vi.unstubAllGlobals());
  return held;
}
