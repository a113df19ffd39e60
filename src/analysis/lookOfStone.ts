import type { Photo } from '../image/photo';
import { whiteFacing } from '../measure/bodyReflectance';
import { silhouette } from '../measure/silhouette';
import { type StoneLook, stoneLook } from '../measure/stoneLook';
import { gaussianBlur } from '../vision/gaussianBlur';
import type { OpenCv } from '../vision/openCv';
import type { Rig } from './report';
import { stoneCrop } from './stoneCrop';
import type { StoneShape } from './stoneShape';

/** What a stone of a photo looks like, to know it again: colors as shares of a white surface under the rig's lamp. */
export function lookOfStone(
  cv: OpenCv,
  photo: Photo,
  { outline, lengthPx, widthPx, areaPx }: StoneShape,
  { mmPerPx, lampColor, lampRadiance, sourceSlope, light }: Rig,
): StoneLook {
  const crop = stoneCrop(photo, outline, mmPerPx, lampColor ?? [1, 1, 1]);
  const cosTheta = Math.sqrt((1 + light.direction[2]) / 2);
  const white = whiteFacing(lampRadiance, sourceSlope, cosTheta);
  return stoneLook(
    crop.stone,
    crop.mask,
    mmPerPx * crop.factor,
    white,
    {
      silhouette: silhouette(outline),
      size: [lengthPx * mmPerPx, widthPx * mmPerPx, areaPx * mmPerPx ** 2],
    },
    (raster, sigmaPx) => gaussianBlur(cv, raster, sigmaPx),
  );
}
