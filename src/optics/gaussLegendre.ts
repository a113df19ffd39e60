/** Places and weights that integrate a smooth function from 0 to 1. */
export type Quadrature = readonly (readonly [place: number, weight: number])[];

/** Gauss-Legendre with four points, moved to 0 to 1. Source: Abramowitz & Stegun, table 25.4. */
export const GAUSS_LEGENDRE_4: Quadrature = [
  [0.06943184420297371, 0.17392742256872692],
  [0.33000947820757187, 0.32607257743127305],
  [0.6699905217924281, 0.32607257743127305],
  [0.9305681557970263, 0.17392742256872692],
];
