// The tables of IEC 60335-1, edition 4, made ready for look-up, and those of its parent and of the transformer standard
// that it refers to.

import clearance from '#tables/standards/iec-60335-1/clearance.json' with { type: 'json' };
import creepage from '#tables/standards/iec-60335-1/creepage.json' with { type: 'json' };
import mainsTransient from '#tables/standards/iec-60335-1/mains-transient.json' with { type: 'json' };
import neededGrades from '#tables/standards/iec-60335-1/needed-grades.json' with { type: 'json' };
import rulesFile from '#tables/standards/iec-60335-1/rules.json' with { type: 'json' };
import testVoltage from '#tables/standards/iec-60335-1/test-voltage.json' with { type: 'json' };
import altitude from '#tables/standards/iec-60664-1/altitude.json' with { type: 'json' };
import bridgingWidth from '#tables/standards/iec-60664-1/bridging-width.json' with { type: 'json' };
import creepageHighFrequency from '#tables/standards/iec-60664-1/creepage-high-frequency.json' with { type: 'json' };
import transformerClearance from '#tables/standards/iec-61558-2-16/clearance.json' with { type: 'json' };
import transformerCreepage from '#tables/standards/iec-61558-2-16/creepage.json' with { type: 'json' };

import { marketsTable } from '#books/shared/national.ts';
import type { Reader } from '#standards/tables/reader.ts';

export const { edition } = rulesFile;

export const tablesOf = (read: Reader) => ({
  rules: read.rules(rulesFile),
  files: {
    clearance: read.table(clearance),
    creepage: read.table(creepage),
    mainsTransient: read.table(mainsTransient),
    neededGrades: read.table(neededGrades),
    markets: marketsTable(read),
    testVoltage: read.table(testVoltage),
    altitude: read.table(altitude),
    bridgingWidth: read.table(bridgingWidth),
    creepageHighFrequency: read.table(creepageHighFrequency),
    transformerClearance: read.table(transformerClearance),
    transformerCreepage: read.table(transformerCreepage),
  },
});

export type Tables = ReturnType<typeof tablesOf>;
