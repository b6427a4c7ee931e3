// A table of variants of one build, as comma-separated values: the first line names fields of the design file, each further
// line is one build; an empty cell leaves the field as the file has it. A column `name` names the variants.
// Cells are read as a file holds them: numbers as numbers, true and false as such, all else as text (`3.2 mm`, `unknown`).

import { editDesign } from '#model/edit/edit-design.ts';
import { keysOf } from '#model/field-path.ts';
import type { DesignFile } from '#model/schema/schema.ts';

export interface Variant {
  readonly name: string;
  /** As typed, in the order of `fields`. */
  readonly cells: readonly string[];
  readonly doc: DesignFile;
}

export type Variants =
  | { readonly kind: 'variants'; readonly fields: readonly string[]; readonly variants: readonly Variant[] }
  | { readonly kind: 'bad'; readonly says: string };

const MOST_VARIANTS = 1000;
const MOST_FIELDS = 64;

export function readVariants(doc: DesignFile, table: string): Variants {
  const rows = rowsOf(table.replace(/^\uFEFF/, ''));
  if (rows === null) return bad('a quoted cell of the table does not end');
  const [head, ...lines] = rows.filter((row) => row.some((cell) => cell !== ''));
  if (head === undefined || lines.length === 0)
    return bad('the table needs a line of fields and at least one line of figures');
  if (lines.length > MOST_VARIANTS)
    return bad(`the table has ${lines.length} lines; at most ${MOST_VARIANTS} are judged`);
  if (head.length > MOST_FIELDS)
    return bad(`the table has ${head.length} columns; at most ${MOST_FIELDS} are read`);
  const wrong = head.find((field) => field !== 'name' && (keysOf(field)?.length ?? 0) === 0);
  if (wrong !== undefined)
    return bad(
      `line 1: found "${wrong}", expected the path of a field, such as layers[0].margins.left.width`,
    );
  const uneven = lines.findIndex((cells) => cells.length > head.length);
  if (uneven >= 0)
    return bad(`line ${uneven + 2}: found ${lines[uneven]!.length} cells, expected ${head.length}`);
  const variants: Variant[] = [];
  for (const [i, cells] of lines.entries()) {
    const edited = applied(doc, head, cells);
    if (typeof edited === 'string') return bad(`line ${i + 2}: ${edited}`);
    const name = cells[head.indexOf('name')] ?? '';
    variants.push({
      name: name === '' ? `line ${i + 2}` : name,
      cells: head.flatMap((field, k) => (field === 'name' ? [] : [cells[k] ?? ''])),
      doc: edited,
    });
  }
  return { kind: 'variants', fields: head.filter((field) => field !== 'name'), variants };
}

const bad = (says: string): Variants => ({ kind: 'bad', says });

function applied(doc: DesignFile, head: readonly string[], cells: readonly string[]): DesignFile | string {
  let edited = doc;
  for (const [k, field] of head.entries()) {
    const cell = cells[k] ?? '';
    if (field === 'name' || cell === '') continue;
    try {
      edited = editDesign(edited, field, valueOf(cell));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      return `${field}: ${error.message}`;
    }
  }
  return edited;
}

function valueOf(cell: string): unknown {
  if (cell === 'true' || cell === 'false') return cell === 'true';
  return /^-?(\d+\.?\d*|\.\d+)$/.test(cell) ? Number(cell) : cell;
}

/** Cells trimmed; null where a quote is left open. */
function rowsOf(text: string): readonly (readonly string[])[] | null {
  const rows: string[][] = [[]];
  let cell = '';
  let isQuoted = false;
  const endCell = (): void => {
    rows.at(-1)!.push(cell.trim());
    cell = '';
  };
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i]!;
    if (isQuoted && sign === '"' && text[i + 1] === '"') cell += text[++i]!;
    else if (sign === '"' && (isQuoted || cell.trim() === '')) isQuoted = !isQuoted;
    else if (!isQuoted && sign === ',') endCell();
    else if (!isQuoted && sign === '\n') {
      endCell();
      rows.push([]);
    } else cell += sign;
  }
  endCell();
  return isQuoted ? null : rows;
}
