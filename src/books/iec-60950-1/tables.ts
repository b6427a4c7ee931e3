// The tables of IEC 60950-1, edition 2 of 2005, made ready for look-up, and those of IEC 60664-1 that it shares.

import altitude from '#tables/standards/iec-60664-1/altitude.json' with { type: 'json' };
import bridgingWidth from '#tables/standards/iec-60664-1/bridging-width.json' with { type: 'json' };
import additional from '#tables/standards/iec-60950-1/additional-clearance.json' with { type: 'json' };
import additional150 from '#tables/standards/iec-60950-1/additional-clearance-150.json' with { type: 'json' };
import clearance from '#tables/standards/iec-60950-1/clearance.json' with { type: 'json' };
import creepage from '#tables/standards/iec-60950-1/creepage.json' with { type: 'json' };
import mainsTransient from '#tables/standards/iec-60950-1/mains-transient.json' with { type: 'json' };
import nationalAltitude from '#tables/standards/iec-60950-1/national-altitude.json' with { type: 'json' };
import neededGrades from '#tables/standards/iec-60950-1/needed-grades.json' with { type: 'json' };
import rulesFile from '#tables/standards/iec-60950-1/rules.json' with { type: 'json' };
import testVoltage from '#tables/standards/iec-60950-1/test-voltage.json' with { type: 'json' };
import windingTemperatureOverload from '#tables/standards/iec-60950-1/winding-temperature-overload.json' with { type: 'json' };

import { marketsTable } from '#books/shared/national.ts';
import type { Reader } from '#standards/tables/reader.ts';

export const { edition } = rulesFile;

export const tablesOf = (read: Reader) => ({
  rules: read.rules(rulesFile),
  files: {
    mainsTransient: read.table(mainsTransient),
    clearance: read.table(clearance),
    additional: read.table(additional),
    additional150: read.table(additional150),
    creepage: read.table(creepage),
    testVoltage: read.table(testVoltage),
    windingTemperatureOverload: read.table(windingTemperatureOverload),
    neededGrades: read.table(neededGrades),
    nationalAltitude: read.table(nationalAltitude),
    markets: marketsTable(read),
    altitude: read.table(altitude),
    bridgingWidth: read.table(bridgingWidth),
  },
});

export type Tables = ReturnType<typeof tablesOf>;
