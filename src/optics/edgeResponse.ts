import { EDGE_SAMPLES_PER_PX } from './edgeSpread';

/** One point of a spatial frequency response: cycles per pixel, and contrast from 0 to about 1. */
export type ResponsePoint = readonly [cyclesPerPx: number, contrast: number];

/**
 * Spatial frequency response of an edge: how much contrast of each fineness the camera keeps.
 *
 * The edge spread is differentiated, weighed with a Hamming window about its peak, transformed, and
 * divided by the response of the difference itself.
 *
 * @param spread - Edge spread, `EDGE_SAMPLES_PER_PX` samples a pixel, rising or falling.
 * @returns Points from 0 to 1 cycle per pixel; 1 at frequency 0.
 * @throws RangeError if the spread does not change from end to end.
 * @see ISO 12233:2017, annex D (window, transform and correction for the derivative).
 */
export function edgeResponse(spread: Float64Array): ResponsePoint[] {
  const lineSpread = windowed(difference(spread));
  const samples = lineSpread.length;
  const total = Math.abs(lineSpread.reduce((sum, value) => sum + value, 0));
  if (!(total > 0)) throw new RangeError('The region holds no edge: it does not change from side to side.');
  const points: ResponsePoint[] = [];
  for (let k = 0; k <= samples / EDGE_SAMPLES_PER_PX; k++) {
    let real = 0;
    let imaginary = 0;
    for (let sample = 0; sample < samples; sample++) {
      const phase = (2 * Math.PI * k * sample) / samples;
      real += lineSpread[sample]! * Math.cos(phase);
      imaginary -= lineSpread[sample]! * Math.sin(phase);
    }
    const phaseOfStep = (2 * Math.PI * k) / samples;
    const ofDifference = k === 0 ? 1 : Math.sin(phaseOfStep) / phaseOfStep;
    const cyclesPerPx = (EDGE_SAMPLES_PER_PX * k) / samples;
    points.push([cyclesPerPx, Math.hypot(real, imaginary) / total / ofDifference]);
  }
  return points;
}

function difference(spread: Float64Array): Float64Array {
  return Float64Array.from({ length: spread.length - 2 }, (_, i) => (spread[i + 2]! - spread[i]!) / 2);
}

function windowed(lineSpread: Float64Array): Float64Array {
  let peak = 0;
  for (let sample = 1; sample < lineSpread.length; sample++) {
    if (Math.abs(lineSpread[sample]!) > Math.abs(lineSpread[peak]!)) peak = sample;
  }
  const reach = Math.max(peak, lineSpread.length - 1 - peak);
  return lineSpread.map(
    (value, sample) => value * (0.54 + 0.46 * Math.cos((Math.PI * (sample - peak)) / reach)),
  );
}
