// The tables of IEC 60335-1, edition 4, made ready for look-up, and those of its parent that it refers to.

import clearance from '#tables/standards/iec-60335-1/clearance.json' with { type: 'json' };
import creepage from '#tables/standards/iec-60335-1/creepage.json' with { type: 'json' };
import mainsTransient from '#tables/standards/iec-60335-1/mains-transient.json' with { type: 'json' };
import neededGrades from '#tables/standards/iec-60335-1/needed-grades.json' with { type: 'json' };
import rulesFile from '#tables/standards/iec-60335-1/rules.json' with { type: 'json' };
import testVoltage from '#tables/standards/iec-60335-1/test-voltage.json' with { type: 'json' };
import altitude from '#tables/standards/iec-60664-1/altitude.json' with { type: 'json' };
import bridgingWidth from '#tables/standards/iec-60664-1/bridging-width.json' with { type: 'json' };

import { readRules } from '#standards/rules-in-words.ts';
import { readTable } from '#standards/table.ts';

export const rules = readRules(rulesFile);
export const { edition } = rulesFile;

export const tables = {
  clearance: readTable(clearance),
  creepage: readTable(creepage),
  mainsTransient: readTable(mainsTransient),
  neededGrades: readTable(neededGrades),
  testVoltage: readTable(testVoltage),
  altitude: readTable(altitude),
  bridgingWidth: readTable(bridgingWidth),
} as const;
