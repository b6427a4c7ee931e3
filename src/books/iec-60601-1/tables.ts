// The tables of IEC 60601-1, edition 3.1, made ready for look-up, and those of IEC 60664-1 that it shares.

import altitude from '#tables/standards/iec-60664-1/altitude.json' with { type: 'json' };
import bridgingWidth from '#tables/standards/iec-60664-1/bridging-width.json' with { type: 'json' };
import mainsTransient from '#tables/standards/iec-60664-1/mains-transient.json' with { type: 'json' };
import clearancePatient from '#tables/standards/iec-60601-1/clearance-patient.json' with { type: 'json' };
import creepagePatient from '#tables/standards/iec-60601-1/creepage-patient.json' with { type: 'json' };
import neededGrades from '#tables/standards/iec-60601-1/needed-grades.json' with { type: 'json' };
import operatorAtMains from '#tables/standards/iec-60601-1/operator-at-mains.json' with { type: 'json' };
import rulesFile from '#tables/standards/iec-60601-1/rules.json' with { type: 'json' };
import testAtMains from '#tables/standards/iec-60601-1/test-at-mains.json' with { type: 'json' };

import { marketsTable } from '#books/shared/national.ts';
import type { Reader } from '#standards/tables/reader.ts';

export const { edition } = rulesFile;

export const tablesOf = (read: Reader) => ({
  rules: read.rules(rulesFile),
  files: {
    creepagePatient: read.table(creepagePatient),
    clearancePatient: read.table(clearancePatient),
    operatorAtMains: read.table(operatorAtMains),
    testAtMains: read.table(testAtMains),
    neededGrades: read.table(neededGrades),
    markets: marketsTable(read),
    mainsTransient: read.table(mainsTransient),
    altitude: read.table(altitude),
    bridgingWidth: read.table(bridgingWidth),
  },
});

export type Tables = ReturnType<typeof tablesOf>;
