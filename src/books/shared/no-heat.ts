// What a book answers that has no limits of heat, or none that anyone here has seen: heat is not judged.

import type { HeatAnswers } from '#books/questions/book.ts';

export const noHeat = (
  thermocoupleAllowance: HeatAnswers['thermocoupleAllowance'],
): Pick<HeatAnswers, keyof HeatAnswers> => ({
  thermalClasses: [],
  insulationTemperature: () => null,
  windingTemperatureOverload: () => null,
  thermocoupleAllowance,
});
