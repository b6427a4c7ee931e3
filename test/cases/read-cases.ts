// All cases of this folder, in the order of their names.

import { readFileSync, readdirSync } from 'node:fs';
import type { Case } from './complaints.ts';

const FOLDER = new URL('.', import.meta.url);

export const cases: readonly Case[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .sort()
  .map((name) => JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')) as Case);
