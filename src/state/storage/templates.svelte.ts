// What somebody keeps under a name to put into any build: layers with their windings, formers, materials, wires. Kept in this
// browser, and in the file of the build that it came from, so that it goes with it.

import type * as z from 'zod';
import { layersOfText } from '#model/edit/layers-of-text.ts';
import { template } from '#model/schema/schema-template.ts';

const KEY = 'layerwright-templates';
export const MOST_TEMPLATES = 50;

export type Template = z.input<typeof template>;
type Several<T, K extends string> = T extends unknown ? (K extends keyof T ? T : never) : never;
export type TemplateOf<K extends TemplateKind> = Several<Template, K>;
export type TemplateKind = 'layers' | 'former' | 'material' | 'wire';

export class Templates {
  #kept: readonly Template[] = $state.raw([]);

  get kept(): readonly Template[] {
    return this.#kept;
  }

  /** Reads what this browser holds; what is damaged is left out. */
  start(): void {
    try {
      const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
      this.#kept = Array.isArray(found) ? found.flatMap(templateIn).slice(0, MOST_TEMPLATES) : [];
    } catch {
      this.#kept = [];
    }
  }

  /** Takes the place of one of the same name and kind. */
  keep(kept: Template): void {
    this.#set(withTemplate(this.#kept, kept));
  }

  forget(gone: Template): void {
    this.#set(this.#kept.filter((each) => !isSameTemplate(each, gone)));
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

export const withTemplate = (all: readonly Template[], one: Template): readonly Template[] =>
  [one, ...all.filter((each) => !isSameTemplate(each, one))].slice(0, MOST_TEMPLATES);

export const isSameTemplate = (a: Template, b: Template): boolean =>
  a.name === b.name && kindOf(a) === kindOf(b);

export const kindOf = (one: Template): TemplateKind =>
  'layers' in one ? 'layers' : 'former' in one ? 'former' : 'material' in one ? 'material' : 'wire';

export const isOfKind = <K extends TemplateKind>(one: Template, kind: K): one is TemplateOf<K> =>
  kindOf(one) === kind;

/** Earlier versions kept layers as the text that is copied. */
function templateIn(found: unknown): readonly Template[] {
  if (template.safeParse(found).success) return [found as Template];
  if (typeof found !== 'object' || found === null || !('text' in found) || !('name' in found)) return [];
  const copied = typeof found.text === 'string' ? layersOfText(found.text) : null;
  if (copied === null || typeof found.name !== 'string') return [];
  const { layers, windings, circuits } = copied;
  return [{ name: found.name, layers: [...layers], windings: [...windings], circuits: [...circuits] }];
}
