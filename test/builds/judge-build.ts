// Reads a published build of this folder, changes what a check asks for, and judges it.

import { readFileSync } from 'node:fs';
import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';

/** New values by the field's path, e.g. `layers[4].margins`; undefined takes the field or the layer out. */
export type Changes = Readonly<Record<string, unknown>>;

export function judgeBuild(name: string, changes: Changes = {}): Verdict {
  const file: unknown = JSON.parse(readFileSync(new URL(`${name}.json`, import.meta.url), 'utf8'));
  for (const [path, value] of Object.entries(changes)) change(file, path, value);
  const read = readDesign(file, knownIds);
  if (read.kind === 'bad') throw new Error(`${name}: ${JSON.stringify(read.faults)}`);
  return judge(read.design).verdict;
}

export function barrierOf(verdict: Verdict): PairVerdict {
  const [pair] = verdict.pairs;
  if (!pair) throw new Error(`${verdict.title} has no pair`);
  return pair;
}

type Node = Record<string, unknown>;

function change(file: unknown, path: string, value: unknown): void {
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const last = keys.pop() ?? '';
  const parent = keys.reduce((node, key) => node[key] as Node, file as Node);
  if (!(last in parent) && value === undefined) throw new Error(`no ${path} to take out`);
  if (value !== undefined) parent[last] = value;
  else if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else delete parent[last];
}
