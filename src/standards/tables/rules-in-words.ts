// The figures of a book's rules that stand in words, each with its citation. The words are in the book's `rules.json`.

import { because, type BecauseOf, type Cite } from '#standards/because.ts';
import type { OwnCell } from './own-cell.ts';
import { citeOf, inBase, ownValue, type Seen } from './table.ts';

export interface RulesFile {
  readonly id: string;
  readonly standard: string;
  readonly edition: string;
  readonly rules: readonly {
    readonly id: string;
    readonly clauses: readonly string[];
    readonly says: string;
    readonly values: Readonly<
      Record<
        string,
        { readonly value: number | string | boolean; readonly unit: string; readonly from: string }
      >
    >;
  }[];
  readonly sources: readonly Seen[];
}

export interface Rule {
  readonly id: string;
  /** The rule in our own words. */
  readonly says: string;
  /** In base units, lengths in nanometres. Throws where the rule has no such figure: a bug of ours. */
  readonly figure: (key: string) => number;
  /** Throws where the rule has no such word. */
  readonly word: (key: string) => string;
  /** Step `rule` with every figure of the rule as printed, or with those named only. */
  readonly because: (keys?: readonly string[]) => BecauseOf<'rule'>;
}

export interface Rules {
  (id: string): Rule;
  /** As filed. */
  readonly file: RulesFile;
}

/** `own` are laid over its figures. */
export function readRules(json: unknown, own: readonly OwnCell[] = []): Rules {
  const file = json as RulesFile;
  const rules = new Map(file.rules.map((rule) => [rule.id, ruleOf(file, rule, own)]));
  const find = (id: string): Rule => {
    const rule = rules.get(id);
    if (rule === undefined) throw new Error(`${file.standard} has no rule ${id}`);
    return rule;
  };
  return Object.assign(find, { file });
}

function ruleOf(file: RulesFile, rule: RulesFile['rules'][number], own: readonly OwnCell[]): Rule {
  const cites = new Map<string, Cite>();
  for (const [key, { from }] of Object.entries(rule.values)) {
    const head = { ...file, table: null, clauses: rule.clauses };
    cites.set(key, citeOf(head, `${rule.id}, ${key}`, from, own));
  }
  return {
    id: rule.id,
    says: rule.says,
    figure: (key) => {
      const found = rule.values[key];
      if (typeof found?.value !== 'number') throw new Error(`rule ${rule.id} has no figure ${key}`);
      return inBase(ownValue(file, `${rule.id}, ${key}`, own) ?? found.value, found.unit);
    },
    word: (key) => {
      const found = rule.values[key]?.value;
      if (typeof found !== 'string') throw new Error(`rule ${rule.id} has no word ${key}`);
      return found;
    },
    because: (keys = [...cites.keys()]) => {
      const printed = keys.map((key) => {
        const stated = ownValue(file, `${rule.id}, ${key}`, own);
        return [key, stated ?? rule.values[key]?.value ?? null] as const;
      });
      const cited = keys.map((key) => cites.get(key)).filter((cite) => cite !== undefined);
      return because('rule', { rule: rule.id, ...Object.fromEntries(printed) }, cited);
    },
  };
}
