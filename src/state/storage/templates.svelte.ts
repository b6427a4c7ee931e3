// Layers that somebody keeps under a name, to put into any build: in this browser, and as text in a file of their own.

const KEY = 'layerwright-templates';
const MOST = 50;

export interface Template {
  readonly name: string;
  /** Layers as they are copied. */
  readonly text: string;
}

export class Templates {
  #kept: readonly Template[] = $state.raw([]);

  get kept(): readonly Template[] {
    return this.#kept;
  }

  /** Reads what this browser holds; what is damaged is left out. */
  start(): void {
    try {
      const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
      this.#kept = Array.isArray(found) ? found.filter(isTemplate).slice(0, MOST) : [];
    } catch {
      this.#kept = [];
    }
  }

  /** Takes the place of one of the same name. */
  keep(name: string, text: string): void {
    this.#set([{ name, text }, ...this.#kept.filter((each) => each.name !== name)].slice(0, MOST));
  }

  forget(name: string): void {
    this.#set(this.#kept.filter((each) => each.name !== name));
  }

  #set(kept: readonly Template[]): void {
    this.#kept = kept;
    try {
      localStorage.setItem(KEY, JSON.stringify(kept));
    } catch {
      // full or blocked storage: they last as long as the page
    }
  }
}

const isTemplate = (found: unknown): found is Template =>
  typeof found === 'object' &&
  found !== null &&
  'name' in found &&
  'text' in found &&
  typeof found.name === 'string' &&
  typeof found.text === 'string';
