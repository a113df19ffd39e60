import type { Texts } from '../texts';

export const measures: Texts['measures'] = {
  decimalMark: ',',
  numberUnclear: 'Schreib eine einzelne Zahl ohne Tausenderzeichen: 1250 oder 1,25.',
  perSquareCentimeter: 'je cm²',
  perSquareInch: 'je Quadratzoll',
};
