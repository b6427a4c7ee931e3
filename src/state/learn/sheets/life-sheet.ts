// Years that insulation lasts, by its temperature and class.

import { lifeHours } from '#stress/heat/thermal-life.ts';
import { celsius } from '#units/quantity.ts';
import { workedOut, type ExploreSheet } from './explore-sheet.ts';

const HOURS_A_YEAR = 8766;

const x = { from: 60, to: 180, step: 2, name: 'hottest spot', unit: '°C' };

export const lifeSheet: ExploreSheet = {
  id: 'life',
  title: 'Heat and years',
  says: 'Years that insulation lasts at one temperature, by the rule of thumb; no promise.',
  x,
  y: { name: 'life', unit: 'years' },
  knob: { name: 'thermal class, °C', options: ['130', '105', '155'] },
  source:
    'rule of thumb: 20 000 h at the class, ten degrees more halve them; thin lines by activation energies of 0.8 and 1.1 eV',
  curves: (option) => {
    const life = (hot: number) => lifeHours(celsius(Number(option)), celsius(hot));
    return Promise.resolve([
      workedOut('halved by 10 K', 'full', x, (hot) => life(hot).byHalving / HOURS_A_YEAR),
      workedOut('shorter', 'thin', x, (hot) => life(hot).byArrhenius[0] / HOURS_A_YEAR),
      workedOut('longer', 'thin', x, (hot) => life(hot).byArrhenius[1] / HOURS_A_YEAR),
    ]);
  },
};
