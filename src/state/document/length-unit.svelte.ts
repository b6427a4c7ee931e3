// The unit in which this browser shows lengths and reads bare numbers: millimetres, inches or thousandths of an inch. The
// file stays in millimetres whatever is chosen. Kept in this browser where storage is allowed.

import { LENGTH_UNITS, tellLengthsIn, type LengthUnit } from '#words/text/length-unit.ts';

const KEY = 'layerwright-length-unit';

export class LengthUnitState {
  #chosen: LengthUnit = $state('mm');

  get chosen(): LengthUnit {
    return this.#chosen;
  }

  /** From now on all words follow what is chosen here. */
  constructor() {
    tellLengthsIn(() => this.#chosen);
  }

  /** Reads what was kept; once the page stands, for it was built in millimetres. */
  start(): void {
    this.#chosen = kept() ?? 'mm';
  }

  /** To the next of the three. */
  turn(): void {
    const place = LENGTH_UNITS.indexOf(this.#chosen);
    this.#chosen = LENGTH_UNITS[(place + 1) % LENGTH_UNITS.length] ?? 'mm';
    try {
      localStorage.setItem(KEY, this.#chosen);
    } catch {
      // blocked storage: the choice lasts as long as the page
    }
  }
}

function kept(): LengthUnit | null {
  try {
    const found = localStorage.getItem(KEY);
    return LENGTH_UNITS.find((unit) => unit === found) ?? null;
  } catch {
    return null;
  }
}
