// The tables of IEC 61558-2-16:2009 + A1 with IEC 61558-1:2005 + A1, made ready for look-up, and those of IEC 60664-1 and -4
// that they refer to.

import altitude from '#tables/standards/iec-60664-1/altitude.json' with { type: 'json' };
import bridgingWidth from '#tables/standards/iec-60664-1/bridging-width.json' with { type: 'json' };
import clearanceHighFrequency from '#tables/standards/iec-60664-1/clearance-high-frequency.json' with { type: 'json' };
import creepageHighFrequency from '#tables/standards/iec-60664-1/creepage-high-frequency.json' with { type: 'json' };
import mainsTransient from '#tables/standards/iec-60664-1/mains-transient.json' with { type: 'json' };
import clearance from '#tables/standards/iec-61558-2-16/clearance.json' with { type: 'json' };
import creepage from '#tables/standards/iec-61558-2-16/creepage.json' with { type: 'json' };
import neededGrades from '#tables/standards/iec-61558-2-16/needed-grades.json' with { type: 'json' };
import rulesFile from '#tables/standards/iec-61558-2-16/rules.json' with { type: 'json' };
import testVoltage from '#tables/standards/iec-61558-2-16/test-voltage.json' with { type: 'json' };

import { marketsTable } from '#books/shared/national.ts';
import type { Reader } from '#standards/tables/reader.ts';

export const { edition } = rulesFile;

export const tablesOf = (read: Reader) => ({
  rules: read.rules(rulesFile),
  files: {
    clearance: read.table(clearance),
    creepage: read.table(creepage),
    testVoltage: read.table(testVoltage),
    neededGrades: read.table(neededGrades),
    markets: marketsTable(read),
    mainsTransient: read.table(mainsTransient),
    altitude: read.table(altitude),
    bridgingWidth: read.table(bridgingWidth),
    clearanceHighFrequency: read.table(clearanceHighFrequency),
    creepageHighFrequency: read.table(creepageHighFrequency),
  },
});

export type Tables = ReturnType<typeof tablesOf>;
