import type { Raster } from '../image/raster';
import { floatsAt, openKernels, placesFor } from './openKernels';

/**
 * Gaussian blur; beyond the border the picture is mirrored about its outermost pixels.
 *
 * The same as OpenCV's, which is tested; in this build of it, without SIMD, a blur takes several times as long.
 *
 * @param sigmaPx - Standard deviation, pixels, > 0; the kernel reaches four of them.
 * @throws RangeError if `sigmaPx` is not positive.
 */
export function gaussianBlur(raster: Raster, sigmaPx: number): Raster {
  if (!(sigmaPx > 0)) throw new RangeError(`A blur of ${sigmaPx} pixels is not positive.`);
  const { width, height, channels } = raster;
  const weights = weightsOf(sigmaPx);
  const plane = 4 * width * height;
  const line = 4 * (width + weights.length + 24);
  const places = placesFor(4 * weights.length, plane, line, plane);
  const [ofWeights, from, ofLine, to] = places as [number, number, number, number];
  floatsAt(ofWeights, weights.length).set(weights);
  const data = new Float32Array(raster.data.length);
  for (let channel = 0; channel < channels; channel++) {
    const before = floatsAt(from, width * height);
    for (let i = 0, j = channel; i < before.length; i++, j += channels) before[i] = raster.data[j]!;
    openKernels().convolvePlane(from, width, height, ofWeights, weights.length, ofLine, to);
    const after = floatsAt(to, width * height);
    for (let i = 0, j = channel; i < after.length; i++, j += channels) data[j] = after[i]!;
  }
  return { width, height, channels, data };
}

/** An odd number of weights that sum to 1; as many as OpenCV takes for pictures of floats. */
function weightsOf(sigmaPx: number): Float64Array {
  const length = Math.round(8 * sigmaPx + 1) | 1;
  const middle = length >> 1;
  const weights = Float64Array.from({ length }, (_, i) =>
    Math.exp(-((i - middle) ** 2) / (2 * sigmaPx ** 2)),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
