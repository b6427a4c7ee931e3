// The tables of IEC 60664-1, edition 3 of 2020, and of its part 4, made ready for look-up.

import altitude from '#tables/standards/iec-60664-1/altitude.json' with { type: 'json' };
import bridgingWidth from '#tables/standards/iec-60664-1/bridging-width.json' with { type: 'json' };
import clearanceByPeak from '#tables/standards/iec-60664-1/clearance-by-peak.json' with { type: 'json' };
import clearanceByWithstand from '#tables/standards/iec-60664-1/clearance-by-withstand.json' with { type: 'json' };
import clearanceHighFrequency from '#tables/standards/iec-60664-1/clearance-high-frequency.json' with { type: 'json' };
import creepage from '#tables/standards/iec-60664-1/creepage.json' with { type: 'json' };
import creepageHighFrequency from '#tables/standards/iec-60664-1/creepage-high-frequency.json' with { type: 'json' };
import mainsTransient from '#tables/standards/iec-60664-1/mains-transient.json' with { type: 'json' };
import neededGrades from '#tables/standards/iec-60664-1/needed-grades.json' with { type: 'json' };
import rulesFile from '#tables/standards/iec-60664-1/rules.json' with { type: 'json' };

import { marketsTable } from '#books/shared/national.ts';
import type { Reader } from '#standards/tables/reader.ts';

export const { edition } = rulesFile;

export const tablesOf = (read: Reader) => ({
  rules: read.rules(rulesFile),
  files: {
    mainsTransient: read.table(mainsTransient),
    clearanceByWithstand: read.table(clearanceByWithstand),
    clearanceByPeak: read.table(clearanceByPeak),
    clearanceHighFrequency: read.table(clearanceHighFrequency),
    altitude: read.table(altitude),
    creepage: read.table(creepage),
    creepageHighFrequency: read.table(creepageHighFrequency),
    bridgingWidth: read.table(bridgingWidth),
    neededGrades: read.table(neededGrades),
    markets: marketsTable(read),
  },
});

export type Tables = ReturnType<typeof tablesOf>;
