import type { Photo } from '../image/photo';
import { analyzePhoto } from './analyzePhoto';
import { mergeExposures } from './mergeExposures';
import type { AnalysisEngines, AnalysisOptions, Watch } from './options';
import type { PhotoReport } from './report';

/**
 * Measures a scene from one photo, or from several shots of it at different exposures.
 *
 * @param shots - The photo at hand first: places in the report are counted in its pixels.
 * @param options - Ball or rig.
 * @param engines - OpenCV and the flaw network, and what reads stones beside each other.
 * @param watch - Told about progress; what it throws stops the analysis.
 * @param lampMoved - The same tray photographed with the lamp elsewhere; null for none.
 * @throws Refusal as `mergeExposures` and `analyzePhoto` do.
 */
export async function analyzeShots(
  shots: readonly [Photo, ...Photo[]],
  options: AnalysisOptions,
  engines: AnalysisEngines,
  watch: Watch,
  lampMoved: Photo | null = null,
): Promise<PhotoReport> {
  if (shots.length === 1) return analyzePhoto(shots[0], options, engines, watch, lampMoved);
  await watch('decode', 0.5);
  const { photo, ratios } = mergeExposures(shots);
  await watch('decode', 1);
  return { ...(await analyzePhoto(photo, options, engines, watch, lampMoved)), exposureRatios: ratios };
}
