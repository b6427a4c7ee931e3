// What is worth saying of a build although it lowers no grade, one sentence each.

import { lengthNear, lengthUp } from '#words/text/number-words.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import { marketWords } from './market-words.ts';
import type { BookRemark, Remark } from '#judge/verdict/remark.ts';

export function remarkSays(remark: Remark): string {
  if ('note' in remark) return bookSays(remark);
  switch (remark.kind) {
    case 'no-barrier':
      return 'There is no barrier in this file: nothing above functional insulation is asked.';
    case 'low-supply':
      return `The supply is ${remark.voltage} V: no public mains is that low (memory: not checked against a source); is a digit missing?`;
    case 'end-turns': {
      const where = remark.sides.length === 2 ? 'both ends' : `the ${remark.sides[0]} end`;
      return `Layer ${remark.layer + 1}: ${where} of ${remark.winding} not held; end turns are to be held by positive means.`;
    }
    case 'fit-doubtful':
      return `Layer ${remark.layer + 1}: a row is full to the last turn; the helix needs one turn's width to return.`;
    case 'covered-wire-crossing':
      return `${remark.winding} ${remark.end}: covered wire crosses another under tension; some laboratories ask for a sleeve or tape there, others accept it for certified wire.`;
    case 'interpolated':
      return `${remark.between.join(' to ')}: meets by interpolating the table; a laboratory that takes the next row asks for ${lengthUp(remark.nextRow)} ${lengthUnit()}.`;
    case 'meets-by-climb':
      return `${remark.between.join(' to ')}: meets only by ${lengthNear(remark.climb)} ${lengthUnit()} of climb along the tape edges at the flange.`;
    case 'earthed-screen':
      return `Layer ${remark.layer + 1}: an earthed screen must cover the windings' full width, with its ends insulated and its lead fixed.`;
    case 'mains-outermost':
      return `Winding ${remark.winding} lies outermost and belongs to the mains: parts near the coil (band, clip, heat sink, output wiring) must keep their distance from it.`;
    case 'confirmed-by-user': {
      const { standard, table, cell, clause, on } = remark;
      const place = table === null ? cell : `table ${table}, ${cell}`;
      return `Confirmed by the user: ${standard}, ${place}; read in ${clause} on ${on}.`;
    }
    case 'confirmed-nowhere':
      return strayWords(remark);
    default:
      return voltageSays(remark);
  }
}

/** A confirmed cell that is not here, with what of its name is not. */
export function strayWords({
  standard,
  table,
  cell,
  missing,
}: Pick<Extract<Remark, { kind: 'confirmed-nowhere' }>, 'standard' | 'table' | 'cell' | 'missing'>): string {
  const what = {
    standard: `no rule book here reads a standard ${standard}`,
    table: `${standard} has no table ${table} here`,
    cell: `table ${table} of ${standard} has no cell ${cell}`,
  }[missing];
  return `Confirmed by the user, but it changes nothing: ${standard}, ${table}, ${cell}; ${what}.`;
}

type VoltageRemark = Extract<Remark, { kind: 'stated-below-computed' | 'measured-unlike-computed' }>;

function voltageSays({ kind, names, quantity, ...figures }: VoltageRemark): string {
  const [given, computed] = [figures.given, figures.computed].map((value) => `${Math.round(value)} V`);
  const what = `Between ${names.join(' and ')} ${given} ${quantity === 'rms' ? 'rms' : 'at the peak'}`;
  return kind === 'stated-below-computed'
    ? `${what} is stated, but the converter gives ${computed}: that counts until the other is measured.`
    : `${what} was measured and counts, but the converter gives ${computed}: one of the two is worth a second look.`;
}

function bookSays({ book, note }: BookRemark): string {
  switch (note.as) {
    case 'market':
      return marketWords(book, note);
    case 'scope':
      return `By ${book} ${note.scope} are judged.`;
    case 'reads':
      return `${book}: ${note.rule}.`;
    case 'other-rows': {
      const known = note.fromMemory ? ', which is marked memory: not checked against its source' : '';
      return `${book} is judged with its own ${note.metric}, ${lengthUp(note.own)} ${lengthUnit()}, between ${note.names.join(' and ')}; the rows that it refers to would ask ${lengthUp(note.other)} ${lengthUnit()}${known}.`;
    }
  }
}
