// Light, dark or as the system has it; kept in this browser where storage is allowed.

const KEY = 'layerwright-theme';

export type ThemeChoice = 'light' | 'dark' | 'system';

export class ThemeState {
  #choice: ThemeChoice = $state('system');
  #systemIsDark = $state(false);

  get choice(): ThemeChoice {
    return this.#choice;
  }

  get shown(): 'light' | 'dark' {
    if (this.#choice !== 'system') return this.#choice;
    return this.#systemIsDark ? 'dark' : 'light';
  }

  /** Reads what was kept and follows the system; returns what stops following. */
  start(): () => void {
    const kept = stored();
    if (kept !== null) this.#set(kept);
    const system = matchMedia('(prefers-color-scheme: dark)');
    const follow = (): void => {
      this.#systemIsDark = system.matches;
    };
    follow();
    system.addEventListener('change', follow);
    return () => system.removeEventListener('change', follow);
  }

  /** To the other one of light and dark. */
  turn(): void {
    const next = this.shown === 'dark' ? 'light' : 'dark';
    this.#set(next);
    try {
      localStorage.setItem(KEY, next);
    } catch {
      // blocked storage: the choice lasts as long as the page
    }
  }

  #set(choice: ThemeChoice): void {
    this.#choice = choice;
    document.documentElement.dataset.theme = choice;
  }
}

function stored(): 'light' | 'dark' | null {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'light' || kept === 'dark' ? kept : null;
  } catch {
    return null;
  }
}
