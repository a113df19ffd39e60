import { floatsAt, openKernels, placesFor } from './openKernels';

/**
 * Puts the natural logarithm in place of every number, in 32-bit floats.
 *
 * @param values - From the least normal number, 1.2 · 10⁻³⁸, up to 3.4 · 10³⁸; not checked, for speed.
 */
export function lnInPlace(values: Float32Array): void {
  const [at] = placesFor(values.byteLength) as [number];
  floatsAt(at, values.length).set(values);
  openKernels().logarithms(at, values.length);
  values.set(floatsAt(at, values.length));
}
