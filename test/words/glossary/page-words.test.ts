// Every term on any page has its word: what fields, headings, columns and buttons are called is collected from the pages and
// held against the glossary. What is left over must be plain English, listed beside this test.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

import { termPieces } from '#words/glossary/term-pieces.ts';
import { plainWords } from './plain-words.ts';

const pages = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? pages(path) : entry.name.endsWith('.svelte') ? [path] : [];
  });

/** What stands on a page as a name, in the words of the page. */
function namesOn(text: string): readonly string[] {
  const script = /<script[^>]*>([\s\S]*?)<\/script>/.exec(text)?.[1] ?? '';
  const markup = text.replace(/<script[\s\S]*?<\/script>|<style[\s\S]*?<\/style>|<!--[\s\S]*?-->/g, '');
  return [
    ...[...script.matchAll(/\b(?:label|name|title): '([^']+)'/g)],
    ...[...markup.matchAll(/\b(?:label|title|aria-label)="([^"{}]+)"/g)],
    ...[...markup.matchAll(/<(?:h[1-4]|th|legend|dt|summary)\b[^>{}]*>([^<{}]+)/g)],
  ].map(([, name]) => name!.trim());
}

/** Words of a name that no term of the glossary covers. */
const leftOver = (name: string): readonly string[] =>
  termPieces(name)
    .filter(({ term }) => term === null)
    .flatMap(({ text }) => text.toLowerCase().match(/\p{L}[\p{L}’'-]+/gu) ?? [])
    // named twice in one text
    .filter((word) => termPieces(word).every(({ term }) => term === null));

describe('the words of the pages', () => {
  it('should all be terms of the glossary or plain English', () => {
    const names = pages('src/ui').flatMap((path) => namesOn(readFileSync(path, 'utf8')));
    expect(names.length).toBeGreaterThan(200);
    const strange = new Set(names.flatMap(leftOver).filter((word) => !plainWords.has(word)));
    expect([...strange].sort()).toEqual([]);
  });

  it('should notice a term of the trade that has no word', () => {
    expect(namesOn('<TypedField label="gyrator turns" />').flatMap(leftOver)).toEqual(['gyrator']);
    expect(plainWords.has('gyrator')).toBe(false);
  });
});
