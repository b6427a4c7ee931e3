// The tables of IEC 62368-1, edition 3 of 2018, made ready for look-up.

import altitude from '#tables/standards/iec-62368-1/altitude.json' with { type: 'json' };
import breakdownField from '#tables/standards/iec-62368-1/breakdown-field.json' with { type: 'json' };
import bridgingWidth from '#tables/standards/iec-62368-1/bridging-width.json' with { type: 'json' };
import capacitors from '#tables/standards/iec-62368-1/capacitors.json' with { type: 'json' };
import clearanceByPeak from '#tables/standards/iec-62368-1/clearance-by-peak.json' with { type: 'json' };
import clearanceByWithstand from '#tables/standards/iec-62368-1/clearance-by-withstand.json' with { type: 'json' };
import clearanceHighFrequency from '#tables/standards/iec-62368-1/clearance-high-frequency.json' with { type: 'json' };
import creepage from '#tables/standards/iec-62368-1/creepage.json' with { type: 'json' };
import creepageHighFrequency from '#tables/standards/iec-62368-1/creepage-high-frequency.json' with { type: 'json' };
import fieldReduction from '#tables/standards/iec-62368-1/field-reduction.json' with { type: 'json' };
import insulationTemperature from '#tables/standards/iec-62368-1/insulation-temperature.json' with { type: 'json' };
import mainsTransient from '#tables/standards/iec-62368-1/mains-transient.json' with { type: 'json' };
import nationalAltitude from '#tables/standards/iec-62368-1/national-altitude.json' with { type: 'json' };
import neededGrades from '#tables/standards/iec-62368-1/needed-grades.json' with { type: 'json' };
import rulesFile from '#tables/standards/iec-62368-1/rules.json' with { type: 'json' };
import temporaryOvervoltage from '#tables/standards/iec-62368-1/temporary-overvoltage.json' with { type: 'json' };
import testByPeak from '#tables/standards/iec-62368-1/test-by-peak.json' with { type: 'json' };
import testByTemporaryOvervoltage from '#tables/standards/iec-62368-1/test-by-temporary-overvoltage.json' with { type: 'json' };
import testByTransient from '#tables/standards/iec-62368-1/test-by-transient.json' with { type: 'json' };
import touchCurrent from '#tables/standards/iec-62368-1/touch-current.json' with { type: 'json' };
import trackingGroups from '#tables/standards/iec-62368-1/tracking-groups.json' with { type: 'json' };
import windingTemperatureOverload from '#tables/standards/iec-62368-1/winding-temperature-overload.json' with { type: 'json' };
import wireLayers from '#tables/standards/iec-62368-1/wire-layers.json' with { type: 'json' };

import { distancesOf } from './distances.ts';
import { marketsTable } from '#books/shared/national.ts';
import type { Reader } from '#standards/tables/reader.ts';
import { solidsOf } from './solids.ts';
import { voltagesOf } from './voltages.ts';

/** The tables with what the procedure asks of them, as the reader gives them. */
export function tablesOf(read: Reader) {
  const { table, rules: readRules } = read;
  const rules = readRules(rulesFile);
  const files = {
    clearanceByPeak: table(clearanceByPeak),
    clearanceHighFrequency: table(clearanceHighFrequency),
    clearanceByWithstand: table(clearanceByWithstand),
    altitude: table(altitude),
    creepage: table(creepage),
    creepageHighFrequency: table(creepageHighFrequency),
    bridgingWidth: table(bridgingWidth),
    mainsTransient: table(mainsTransient),
    temporaryOvervoltage: table(temporaryOvervoltage),
    testByTransient: table(testByTransient),
    testByPeak: table(testByPeak),
    testByTemporaryOvervoltage: table(testByTemporaryOvervoltage),
    fieldReduction: table(fieldReduction),
    wireLayers: table(wireLayers),
    breakdownField: table(breakdownField),
    capacitors: table(capacitors),
    insulationTemperature: table(insulationTemperature),
    windingTemperatureOverload: table(windingTemperatureOverload),
    touchCurrent: table(touchCurrent),
    neededGrades: table(neededGrades),
    nationalAltitude: table(nationalAltitude),
    markets: marketsTable(read),
    trackingGroups: table(trackingGroups),
  };
  return {
    files,
    rules,
    distances: distancesOf(files, rules),
    voltages: voltagesOf(files, rules),
    solids: solidsOf(files, rules),
    edition: rulesFile.edition,
  };
}
