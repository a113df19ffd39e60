/** How numbers are written. */
export const measures = {
  /** Between the whole and its parts. */
  decimalMark: '.',
  numberUnclear: 'Write one number, without a mark for thousands: 1250, or 1.25.',
  perSquareCentimeter: 'per cm²',
  perSquareInch: 'per in²',
} as const;
