import { linearRgb } from './contrastRatio';

/** Linear RGB as seen without one kind of cone. Source: Machado, Oliveira, Fernandes 2009, table 1, severity 1.0 (from memory). */
const WITHOUT: Readonly<Record<'protan' | 'deutan', readonly (readonly number[])[]>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
};

/** Linear sRGB to CIE XYZ relative to the white point D65. Source: IEC 61966-2-1. */
const TO_XYZ = [
  [0.4124 / 0.9505, 0.3576 / 0.9505, 0.1805 / 0.9505],
  [0.2126, 0.7152, 0.0722],
  [0.0193 / 1.089, 0.1192 / 1.089, 0.9505 / 1.089],
];

function times(matrix: readonly (readonly number[])[], vector: readonly number[]): number[] {
  return matrix.map((row) => row.reduce((sum, factor, index) => sum + factor * (vector[index] ?? 0), 0));
}

/**
 * A color as someone sees it who lacks one kind of cone.
 *
 * @returns CIE 1976 L*, a*, b*.
 */
export function seenWithoutCones(color: string, kind: 'protan' | 'deutan'): [number, number, number] {
  const seen = times(WITHOUT[kind], linearRgb(color)).map((value) => Math.min(1, Math.max(0, value)));
  const bend = (share: number) =>
    share > (6 / 29) ** 3 ? Math.cbrt(share) : share / (3 * (6 / 29) ** 2) + 4 / 29;
  const [x = 0, y = 0, z = 0] = times(TO_XYZ, seen).map(bend);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
