/** One abrasive size. */
export interface Grit {
  /** Designation of FEPA 42. */
  readonly name: string;
  /** Typical grain size, micrometers: mean of macrogrits, median (d50) of microgrits. */
  readonly micrometers: number;
}

/** Abrasive grains from coarse to fine. Source: FEPA 42 (F grits), from memory. */
export const GRITS: readonly Grit[] = [
  { name: 'F60', micrometers: 260 },
  { name: 'F80', micrometers: 185 },
  { name: 'F90', micrometers: 154 },
  { name: 'F220', micrometers: 58 },
  { name: 'F320', micrometers: 29.2 },
  { name: 'F400', micrometers: 17.3 },
  { name: 'F500', micrometers: 12.8 },
  { name: 'F600', micrometers: 9.3 },
  { name: 'F800', micrometers: 6.5 },
  { name: 'F1000', micrometers: 4.5 },
  { name: 'F1200', micrometers: 3 },
  { name: 'F1500', micrometers: 2 },
  { name: 'F2000', micrometers: 1.2 },
];
