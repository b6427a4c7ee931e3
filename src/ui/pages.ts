// What each page is made of, loaded when it is opened. Which component a page has says its record.

import type { Component } from 'svelte';
import { pageOf, type PageName } from '#state/app/page-list.ts';

type View = Component<Record<string, never>>;

const VIEWS = import.meta.glob<{ readonly default: View }>(['./pages/*/*View.svelte', '!./pages/start/*']);

export const loadPage = (name: PageName): Promise<{ readonly default: View }> =>
  VIEWS[`./pages/${pageOf(name).view}.svelte`]!();
