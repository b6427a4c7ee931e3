// The permittivity of vacuum, F/m: the field solver counts in it, so what it answers is multiplied by it once.
// The recommended value of CODATA, 2022 (memory).

export const VACUUM = 8.8541878188e-12;
