import type { Photo } from '../image/photo';
import type { OpenCv } from '../vision/openCv';
import { analyzePhoto } from './analyzePhoto';
import { mergeExposures } from './mergeExposures';
import type { AnalysisOptions, Watch } from './options';
import type { PhotoReport } from './report';

/**
 * Measures a scene from one photo, or from several shots of it at different exposures.
 *
 * @param shots - The photo at hand first: places in the report are counted in its pixels.
 * @param options - Ball or rig.
 * @param cv - OpenCV.
 * @param watch - Told about progress; what it throws stops the analysis.
 * @throws Refusal as `mergeExposures` and `analyzePhoto` do.
 */
export async function analyzeShots(
  shots: readonly [Photo, ...Photo[]],
  options: AnalysisOptions,
  cv: OpenCv,
  watch: Watch,
): Promise<PhotoReport> {
  if (shots.length === 1) return analyzePhoto(shots[0], options, cv, watch);
  await watch('decode', 0.5);
  const { photo, ratios } = mergeExposures(shots);
  await watch('decode', 1);
  return { ...(await analyzePhoto(photo, options, cv, watch)), exposureRatios: ratios };
}
