// An entry of the design file in words, whatever it holds: a length, a wire, a sleeve, leads, a whole layer or winding.
// Never the file's own brackets: who compares two builds reads what is there, not how it is written down.

import { fileLengthWords } from '#words/text/file-length.ts';

type Entry = Record<string, unknown>;

const isEntry = (value: unknown): value is Entry =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export function entryWords(value: unknown): string {
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'boolean') return value ? 'filled' : 'empty';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(entryWords).join('; ');
  if (!isEntry(value)) return fileLengthWords(String(value));
  if ('value' in value)
    return `${plainWords(value['value'])} ± ${'plusMinus' in value ? plainWords(value['plusMinus']) : '0'}`;
  return (shapeOf(value) ?? others)(value);
}

/** Of leads that differ at one end only, that end alone; everything else as it is. */
export function changedEnds(from: unknown, to: unknown): readonly [unknown, unknown] {
  if (!isEntry(from) || !isEntry(to) || !isLeads(from) || !isLeads(to)) return [from, to];
  const ends = ['start', 'finish'].filter((end) => JSON.stringify(from[end]) !== JSON.stringify(to[end]));
  const only = (leads: Entry): Entry => Object.fromEntries(ends.map((end) => [end, leads[end]]));
  return [only(from), only(to)];
}

const isLeads = (entry: Entry): boolean => 'start' in entry && 'finish' in entry;

const SHAPES: readonly [(entry: Entry) => boolean, (entry: Entry) => string][] = [
  [(entry) => entry['kind'] === 'tape', plies],
  [(entry) => entry['kind'] === 'enamelled', (entry) => `enamelled wire ${plainWords(entry['conductor'])}`],
  [
    (entry) => entry['kind'] === 'layer-insulated',
    (entry) => `wire with ${String(entry['insulationLayers'])} insulation layers`,
  ],
  [
    (entry) => entry['kind'] === 'winding',
    (entry) =>
      joined([`winding ${plainWords(entry['winding'])}`, some(entry['turns'], 'turns'), sidesOf(entry)]),
  ],
  [
    (entry) => entry['kind'] === 'screen',
    (entry) =>
      joined([
        `screen of ${plainWords(entry['circuit'])}`,
        some(entry['thickness'], 'thick'),
        sidesOf(entry),
        'lead' in entry ? `lead ${entryWords(entry['lead'])}` : '',
      ]),
  ],
  [(entry) => 'wire' in entry, wound],
  [(entry) => 'start' in entry || 'finish' in entry, leads],
  [(entry) => 'exit' in entry, lead],
  [(entry) => 'side' in entry, link],
  [(entry) => 'wall' in entry, sleeve],
  [(entry) => 'plies' in entry, plies],
  [(entry) => 'role' in entry, (entry) => `${plainWords(entry['name'])} (${plainWords(entry['role'])})`],
  [(entry) => 'left' in entry && 'right' in entry, sides],
  [
    (entry) => 'width' in entry && 'filled' in entry,
    (entry) => `${plainWords(entry['width'])} ${entry['filled'] === true ? 'filled' : 'empty'}`,
  ],
];

const shapeOf = (entry: Entry) => SHAPES.find(([is]) => is(entry))?.[1];

const joined = (parts: readonly string[]): string => parts.filter((part) => part !== '').join(', ');

const plainWords = (value: unknown): string =>
  isEntry(value) ? entryWords(value) : value === undefined ? 'not said' : fileLengthWords(String(value));

const some = (value: unknown, behind: string): string =>
  value === undefined ? '' : `${plainWords(value)} ${behind}`;

function plies(entry: Entry): string {
  return `${plainWords(entry['plies'])} plies of ${plainWords(entry['material'])}`;
}

function sleeve(entry: Entry): string {
  const material = entry['material'] === undefined ? 'sleeve' : plainWords(entry['material']);
  return `${material}, wall ${plainWords(entry['wall'])}, ${plainWords(entry['into'])} into the window`;
}

const WAYS: Readonly<Record<string, string>> = {
  slot: 'through the slot',
  riser: 'up the inside of the flange',
  top: 'over the rim',
};

const wayOf = ({ way }: Entry): string => WAYS[String(way)] ?? 'by an unknown way';

function sleeved({ sleeve: held }: Entry): string {
  if (isEntry(held)) return `sleeve of ${sleeve(held)}`;
  return held === undefined || held === null || held === 'none' ? 'no sleeve' : `sleeve ${plainWords(held)}`;
}

function link(entry: Entry): string {
  return joined([`at the ${plainWords(entry['side'])} side`, wayOf(entry), sleeved(entry)]);
}

function lead(entry: Entry): string {
  const at = entry['at'] === undefined ? '' : `from the ${plainWords(entry['at'])} end`;
  return joined([
    at,
    `out ${plainWords(entry['exit'])} ${wayOf(entry)}`,
    sleeved(entry),
    entry['crossTape'] === undefined ? '' : `${plainWords(entry['crossTape'])} plies under it`,
    entry['bareFrom'] === undefined ? '' : `bare from ${plainWords(entry['bareFrom'])} on`,
  ]);
}

function leads(entry: Entry): string {
  const { start, finish } = entry;
  if (JSON.stringify(start) === JSON.stringify(finish)) return `both ends ${entryWords(start)}`;
  return joined([
    'start' in entry ? `start ${entryWords(start)}` : '',
    'finish' in entry ? `finish ${entryWords(finish)}` : '',
  ]);
}

function wound(entry: Entry): string {
  const links = entry['links'];
  return joined([
    `winding ${plainWords(entry['id'])} of ${plainWords(entry['circuit'])}`,
    entryWords(entry['wire']),
    entry['leads'] === undefined ? 'leads not said' : `leads ${entryWords(entry['leads'])}`,
    links === undefined ? '' : `links ${entryWords(links)}`,
  ]);
}

function sides(entry: Entry): string {
  const [left, right] = [entryWords(entry['left']), entryWords(entry['right'])];
  return left === right ? `${left} at both sides` : `${left} at the left, ${right} at the right`;
}

const sidesOf = (entry: Entry): string =>
  entry['margins'] === undefined ? '' : `margins ${entryWords(entry['margins'])}`;

/** What has no sentence of its own: each field by its name. */
function others(entry: Entry): string {
  return Object.entries(entry)
    .map(([key, value]) => `${key.replace(/[A-Z]/g, (big) => ` ${big.toLowerCase()}`)} ${entryWords(value)}`)
    .join(', ');
}
