// What the market that a build is sold in changes, one sentence each.

import type { MarketNote } from '#judge/verdict/remark.ts';
import { confirmedWords } from '#words/text/confirmed-words.ts';
import { plain } from '#words/text/number-words.ts';

export function marketWords(book: string, note: MarketNote & { readonly market: string }): string {
  const { market } = note;
  switch (note.what) {
    case 'no-altitude':
      return `${market}: no altitude of this market was seen for ${book}; ${metresOf(note.altitude)} count.`;
    case 'altitude': {
      const { altitude, stated } = note;
      const asked = `${market}: ${book} counts ${metresOf(altitude)} there unless the equipment is marked for less (${confirmedWords(note.known)})`;
      if (stated === null) return `${asked}; the file names no altitude, so they count.`;
      return stated < altitude
        ? `${asked}; the file states ${metresOf(stated)}, which counts: it must be so marked.`
        : `${asked}; the file states ${metresOf(stated)}.`;
    }
    case 'mains':
      return `${market}: the supply of this file is lower; what the mains brings is read at ${plain(note.volts)} V (${confirmedWords(note.known)}).`;
    case 'category':
      return `${market}: the file names no overvoltage category; ${'I'.repeat(note.category)} counts (${confirmedWords(note.known)}).`;
  }
}

const metresOf = (altitude: number): string => `${plain(altitude)} m`;
