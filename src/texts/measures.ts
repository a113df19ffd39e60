import { plainNumber, withDecimalMark } from './plainNumber';
import { speech, texts } from './speech';

/** Millimeters of an inch; exact. Source: NIST SP 811, appendix B.8. */
const MM_PER_INCH = 25.4;
/** Square centimeters of a square inch. */
const CM2_PER_IN2 = (MM_PER_INCH / 10) ** 2;

/** Two digits, however small. */
function inchNumber(value: number): string {
  return Math.abs(value) >= 0.1 || value === 0
    ? plainNumber(value)
    : withDecimalMark(String(Number(value.toPrecision(1 + Number(Math.abs(value) >= 0.01)))));
}

const metric = (value: number, decimals: number | undefined) =>
  decimals === undefined ? plainNumber(value) : withDecimalMark(value.toFixed(decimals));

/**
 * A length as a bare number in the owner's unit, for a scale or a range: "31", "1.2".
 *
 * @param decimals - Of the millimeters, where a table wants as many everywhere; two digits where left out, and in inches.
 */
export function lengthNumber(mm: number, decimals?: number): string {
  return speech().length === 'mm' ? metric(mm, decimals) : inchNumber(mm / MM_PER_INCH);
}

/** The owner's unit of length: "mm", "in". */
export const lengthUnit = (): string => (speech().length === 'mm' ? 'mm' : 'in');

/** "31 mm", "1.2 in", "0.031 in"; `decimals` as for {@link lengthNumber}. */
export const lengthWords = (mm: number, decimals?: number): string =>
  `${lengthNumber(mm, decimals)} ${lengthUnit()}`;

/** A length finer than a grain: "95 µm", "0.004 in". */
export const finenessWords = (mm: number): string =>
  speech().length === 'mm' ? `${plainNumber(1000 * mm)} µm` : lengthWords(mm);

/** "3.1 mm²", "0.0048 in²"; `decimals` as for {@link lengthNumber}. */
export function areaWords(mm2: number, decimals?: number): string {
  return speech().length === 'mm'
    ? `${metric(mm2, decimals)} mm²`
    : `${inchNumber(mm2 / MM_PER_INCH ** 2)} in²`;
}

/** A stone's surface: "3.1 cm²", "0.48 in²"; `decimals` of the square centimeters, as for {@link lengthNumber}. */
export function surfaceWords(cm2: number, decimals?: number): string {
  return speech().length === 'mm' ? `${metric(cm2, decimals)} cm²` : areaWords(100 * cm2);
}

/** A count on a surface as a bare number, in the owner's unit: "3", "19". */
export const densityNumber = (perCm2: number): string =>
  plainNumber(speech().length === 'mm' ? perCm2 : perCm2 * CM2_PER_IN2);

/** "per cm²", "per in²". */
export function densityUnit(): string {
  const { perSquareCentimeter, perSquareInch } = texts().measures;
  return speech().length === 'mm' ? perSquareCentimeter : perSquareInch;
}

/** A length of the bench rather than of a stone: "15 cm", "6 in". */
export function benchLengthWords(mm: number): string {
  return speech().length === 'mm' ? `${plainNumber(mm / 10)} cm` : `${Math.round(mm / MM_PER_INCH)} in`;
}

/** A count on a surface: "3 per cm²", "19 per in²". */
export const densityWords = (perCm2: number): string => `${densityNumber(perCm2)} ${densityUnit()}`;

/** A length typed in the owner's unit, in mm. */
export const mmOfTyped = (value: number): number => (speech().length === 'mm' ? value : value * MM_PER_INCH);

/** A length to be shown in a field, in the owner's unit; a tenth of a millimeter or a hundredth of an inch is kept. */
export function typedLength(mm: number): number {
  return speech().length === 'mm' ? Math.round(10 * mm) / 10 : Math.round((100 * mm) / MM_PER_INCH) / 100;
}

const toTypedDigits = (value: number) => Number(value.toPrecision(4));

/**
 * A limit on a length or a density as a field shows it: as it is kept in mm or per cm², to four digits in inches, so that
 * what was typed is shown back as it was typed.
 */
export function typedLimit(kept: number, unit: 'mm' | 'per cm²'): number {
  if (speech().length === 'mm') return kept;
  return toTypedDigits(unit === 'mm' ? kept / MM_PER_INCH : kept * CM2_PER_IN2);
}

/** A limit typed in the owner's unit, in mm or per cm². */
export function limitOfTyped(typed: number, unit: 'mm' | 'per cm²'): number {
  if (speech().length === 'mm') return typed;
  return unit === 'mm' ? typed * MM_PER_INCH : typed / CM2_PER_IN2;
}
