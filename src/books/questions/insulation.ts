// What one insulation is worth. It answers three questions: is it basic, is it supplementary, is it reinforced.

export interface Insulation {
  readonly basic: boolean;
  readonly supplementary: boolean;
  readonly reinforced: boolean;
}

export const FUNCTIONAL: Insulation = { basic: false, supplementary: false, reinforced: false };
export const BASIC_ONLY: Insulation = { basic: true, supplementary: false, reinforced: false };
export const BASIC_AND_SUPPLEMENTARY: Insulation = { basic: true, supplementary: true, reinforced: false };
export const REINFORCED: Insulation = { basic: true, supplementary: true, reinforced: true };

/** In one word, for a derivation. */
export function worthOf({ basic, supplementary, reinforced }: Insulation): string {
  if (reinforced) return 'reinforced';
  if (supplementary) return basic ? 'basic and supplementary' : 'supplementary';
  return basic ? 'basic' : 'functional';
}
