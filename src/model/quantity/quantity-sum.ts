// What arithmetic in a field comes to: `2*0.06+0.025 mm`, `3.2 mm - 0.4`, `(1/8) in`. A number beside a length is one in the
// field's own unit. Only numbers, units of the field's kind, + - * / and brackets are taken; the parser of the expression
// library builds the tree, nothing of it is ever run. Loaded when the first sum is typed, never before.

import {
  parse,
  type ConstantNode,
  type MathNode,
  type OperatorNode,
  type ParenthesisNode,
  type SymbolNode,
} from 'mathjs/number';
import { dimension, type DimensionName } from './dimension.ts';
import { quantityText } from './quantity-text.ts';

export type SumText =
  { readonly kind: 'figure'; readonly value: number } | { readonly kind: 'bad'; readonly why: string };

const LONGEST = 80;
const MOST_NODES = 60;
const TAKEN = /^[\d.,\s+\-*/()"″a-zA-Zµμ°Ω]+$/u;

/** In the kind's own unit. */
export function quantitySum(text: string, name: DimensionName): SumText {
  if (text.length > LONGEST) return bad(`longer than ${LONGEST} characters`);
  if (!TAKEN.test(text)) return bad('only numbers, units, + - * / and brackets');
  if (/(?:^|[^\d.,])[1-9]\d{0,2},\d{3}(?!\d)/.test(text))
    return bad('a comma before three digits could mean a thousand: write a point, or no comma');
  try {
    const { value, isQuantity } = worth(parse(spelled(text)), name, { left: MOST_NODES });
    if (!Number.isFinite(value)) return bad('it divides by nothing');
    const own = isQuantity ? value / factorOf(dimension(name).own, name) : value;
    return { kind: 'figure', value: Number(own.toPrecision(12)) + 0 };
  } catch (fault) {
    return bad(fault instanceof Refused ? fault.message : 'not a sum of quantities');
  }
}

interface Worth {
  readonly value: number;
  /** Has a unit: the value is in the kind's base unit; else it is a plain number. */
  readonly isQuantity: boolean;
}

class Refused extends Error {}

function worth(node: MathNode, name: DimensionName, budget: { left: number }): Worth {
  if (budget.left-- <= 0) throw new Refused('too long a sum');
  if (isKind(node, 'ParenthesisNode')) return worth(node.content, name, budget);
  if (isKind(node, 'ConstantNode') && typeof node.value === 'number')
    return { value: node.value, isQuantity: false };
  if (isKind(node, 'SymbolNode')) return { value: factorOf(node.name, name), isQuantity: true };
  if (!isKind(node, 'OperatorNode')) throw new Refused('only numbers, units, + - * / and brackets');
  const [a, b] = node.args.map((each) => worth(each, name, budget));
  if (a === undefined) throw new Refused('a sign stands alone');
  return b === undefined ? signed(node.fn, a) : combined(node.fn, a, b, name);
}

/** The kinds of node that are taken; the tree says which one it is by its name alone. */
interface Nodes {
  readonly ParenthesisNode: ParenthesisNode;
  readonly ConstantNode: ConstantNode;
  readonly SymbolNode: SymbolNode;
  readonly OperatorNode: OperatorNode;
}

const isKind = <K extends keyof Nodes>(node: MathNode, kind: K): node is Nodes[K] & MathNode =>
  node.type === kind;

function signed(sign: string, { value, isQuantity }: Worth): Worth {
  if (sign !== 'unaryMinus' && sign !== 'unaryPlus') throw new Refused(`${sign} is not taken`);
  return { value: sign === 'unaryMinus' ? -value : value, isQuantity };
}

function combined(sign: string, a: Worth, b: Worth, name: DimensionName): Worth {
  switch (sign) {
    case 'add':
    case 'subtract': {
      const isQuantity = a.isQuantity || b.isQuantity;
      const [left, right] = [a, b].map(({ value, isQuantity: own }) =>
        isQuantity && !own ? value * factorOf(dimension(name).own, name) : value,
      ) as [number, number];
      return { value: sign === 'add' ? left + right : left - right, isQuantity };
    }
    case 'multiply':
      if (a.isQuantity && b.isQuantity) throw new Refused(`two of ${dimension(name).word} multiplied`);
      return { value: a.value * b.value, isQuantity: a.isQuantity || b.isQuantity };
    case 'divide':
      if (b.isQuantity && !a.isQuantity) throw new Refused(`divided by ${dimension(name).word}`);
      return { value: a.value / b.value, isQuantity: a.isQuantity && !b.isQuantity };
    default:
      throw new Refused('only numbers, units, + - * / and brackets');
  }
}

/** One of this unit in the kind's base unit. */
function factorOf(unit: string, name: DimensionName): number {
  const [one, none] = [quantityText(`1 ${unit}`, name), quantityText(`0 ${unit}`, name)];
  if (one.kind === 'bad' || none.kind === 'bad')
    throw new Refused(`no unit of ${dimension(name).word}: ${unit}`);
  // a sum of degrees is no temperature
  if (none.value !== 0) throw new Refused(`sums do not take ${unit}`);
  return one.value;
}

/** As the parser reads it: one spelling of signs that look alike, points for commas. */
const spelled = (text: string): string =>
  text
    .replace(/[µμ](?=[a-zA-Z])/gu, 'u')
    .replace(/["″]/gu, ' in')
    .replace(/Ω/gu, 'ohm')
    .replace(/(\d),(\d)/g, '$1.$2');

const bad = (why: string): SumText => ({ kind: 'bad', why });
