// The pages, each loaded when it is opened; the first one is part of the page's own script.

import type { Component } from 'svelte';
import type { PageName } from '#state/app/pages.svelte.ts';

/** `onkeys` shows the list of keys, for a page that offers it. */
type View = Component<{ readonly onkeys: () => void }>;

type Loaded = Promise<{ readonly default: Component<Record<string, never>> | View }>;

const load = async (view: Loaded): Promise<{ readonly default: View }> => (await view) as { default: View };

export const LOAD: Readonly<Record<Exclude<PageName, 'start'>, () => Promise<{ readonly default: View }>>> = {
  sheet: () => load(import('./pages/sheet/SheetView.svelte')),
  examine: () => load(import('./pages/examine/ExamineView.svelte')),
  design: () => load(import('./pages/design/DesignView.svelte')),
  learn: () => load(import('./pages/learn/LearnView.svelte')),
  words: () => load(import('./pages/words/WordsView.svelte')),
  open: () => load(import('./pages/open/OpenView.svelte')),
  repair: () => load(import('./pages/repair/RepairView.svelte')),
  stress: () => load(import('./pages/stress/StressView.svelte')),
  books: () => load(import('./pages/books/BooksView.svelte')),
  tables: () => load(import('./pages/tables/TablesView.svelte')),
  field: () => load(import('./pages/field/FieldView.svelte')),
  mend: () => load(import('./pages/mend/MendView.svelte')),
  spread: () => load(import('./pages/spread/SpreadView.svelte')),
  compare: () => load(import('./pages/compare/CompareView.svelte')),
  report: () => load(import('./pages/papers/PapersView.svelte')),
  photographs: () => load(import('./pages/photographs/PhotographsView.svelte')),
  'taking-apart': () => load(import('./pages/taking-apart/TakingApartView.svelte')),
  decide: () => load(import('./pages/decide/DecideView.svelte')),
  many: () => load(import('./pages/many/ManyView.svelte')),
};
