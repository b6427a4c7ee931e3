import { describe, expect, it } from 'vitest';
import { blankDesign } from '#model/begin/blank-design.ts';
import { designSchema } from '#model/schema/design-schema.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { fullFile, KNOWN, plainFile } from '#test/model/sample-files.ts';

describe('designSchema', () => {
  it('should be plain JSON of the draft that it names', () => {
    const made = designSchema();
    expect(made['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(JSON.parse(JSON.stringify(made))).toEqual(made);
  });

  it('should require what the format requires, and nothing else', () => {
    const { required, properties } = designSchema() as {
      required: string[];
      properties: Record<string, { required: string[] }>;
    };
    expect(required).toEqual([
      'format',
      'title',
      'origin',
      'rules',
      'supply',
      'circuits',
      'former',
      'windings',
      'layers',
    ]);
    expect(properties['supply']?.required).toEqual(['kind', 'voltage']);
    expect(properties['former']?.required).toEqual(['height', 'wall', 'flange', 'chambers']);
  });

  it.each([
    ['plain', plainFile()],
    ['full', fullFile()],
    ['blank', blankDesign()],
  ])('should hold for the %s file, which is read too', (_, file) => {
    expect(fits(file)).toBe(true);
    expect(readDesign(file, KNOWN).kind).toBe('design');
  });

  it.each([
    ['colour', 'red'],
    ['layers[0].turns', 1.5],
    ['layers[0].turns', 0],
    ['layers[0].kind', 'paper'],
    ['layers[0].winding', undefined],
    ['former.height', true],
    ['former.wall', { plies: 3, value: 2 }],
    ['supply.voltage', { plusMinus: 3 }],
    ['windings[0].leads', 'left'],
    ['windings[0].leads', { start: { at: 'middle' } }],
    ['layers[0].margins.left', { size: 3 }],
  ])('should not hold with %s = %j, which is refused too', (path, value) => {
    const file = editDesign(plainFile(), path, value);
    expect(fits(file)).toBe(false);
    expect(readDesign(file, KNOWN).kind).toBe('bad');
  });
});

// What the test needs of JSON Schema; a word that is not known here fails the test rather than passing unread.

type Schema = Readonly<Record<string, unknown>>;
const KNOWN_WORDS = new Set(
  (
    '$schema $defs $ref title description id type enum const pattern minLength maxLength minimum maximum minItems maxItems ' +
    'items prefixItems properties propertyNames required additionalProperties anyOf oneOf'
  ).split(' '),
);

const fits = (value: unknown): boolean =>
  holds(designSchema(), value, designSchema()['$defs'] as Record<string, Schema>);

function holds(schema: Schema, value: unknown, defs: Readonly<Record<string, Schema>>): boolean {
  const foreign = Object.keys(schema).find((word) => !KNOWN_WORDS.has(word));
  if (foreign) throw new Error(`the test does not know ${foreign}`);
  const inner = (part: unknown, of: unknown): boolean => holds(part as Schema, of, defs);
  const { $ref, type, anyOf, oneOf } = schema as {
    $ref?: string;
    type?: string | string[];
    anyOf?: Schema[];
    oneOf?: Schema[];
  };
  if ($ref && !inner(defs[$ref.replace('#/$defs/', '')], value)) return false;
  if (type && ![type].flat().some((name) => isOfType(value, name))) return false;
  if (anyOf && !anyOf.some((part) => inner(part, value))) return false;
  if (oneOf && oneOf.filter((part) => inner(part, value)).length !== 1) return false;
  if ('enum' in schema && !(schema['enum'] as unknown[]).includes(value)) return false;
  if ('const' in schema && schema['const'] !== value) return false;
  if (typeof value === 'string') return textHolds(schema, value);
  if (typeof value === 'number') return within(schema, value, 'minimum', 'maximum');
  if (Array.isArray(value)) {
    const prefix = (schema['prefixItems'] ?? []) as Schema[];
    const rest = value.slice(prefix.length);
    const restHolds =
      typeof schema['items'] === 'object'
        ? rest.every((item) => inner(schema['items'], item))
        : schema['items'] !== false || rest.length === 0;
    return (
      within(schema, value.length, 'minItems', 'maxItems') &&
      restHolds &&
      prefix.every((part, i) => inner(part, value[i]))
    );
  }
  if (typeof value !== 'object' || value === null) return true;
  const properties = (schema['properties'] ?? {}) as Record<string, Schema>;
  const required = (schema['required'] ?? []) as string[];
  const others = schema['additionalProperties'];
  const othersHold = (of: unknown) => (typeof others === 'object' ? inner(others, of) : others !== false);
  return (
    required.every((name) => name in value) &&
    Object.entries(value).every(([name, of]) =>
      properties[name] ? inner(properties[name], of) : othersHold(of),
    )
  );
}

const textHolds = (schema: Schema, value: string): boolean =>
  within(schema, value.length, 'minLength', 'maxLength') &&
  (typeof schema['pattern'] !== 'string' || new RegExp(schema['pattern'], 'u').test(value));

const within = (schema: Schema, value: number, from: string, to: string): boolean =>
  value >= ((schema[from] as number | undefined) ?? -Infinity) &&
  value <= ((schema[to] as number | undefined) ?? Infinity);

function isOfType(value: unknown, type: string): boolean {
  if (type === 'array') return Array.isArray(value);
  if (type === 'null') return value === null;
  if (type === 'integer') return Number.isInteger(value);
  return typeof value === type && value !== null && !Array.isArray(value);
}
