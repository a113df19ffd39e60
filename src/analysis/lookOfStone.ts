import type { Photo } from '../image/photo';
import { whiteFacing } from '../measure/bodyReflectance';
import { silhouette } from '../measure/silhouette';
import { type StoneLook, stoneLook } from '../measure/stoneLook';
import type { OpenCv } from '../vision/openCv';
import { wideBlur } from '../vision/wideBlur';
import type { Rig } from './report';
import { ENOUGH_PX_PER_MM, stoneCrop } from './stoneCrop';
import type { StoneShape } from './stoneShape';

/** What a stone of a photo looks like, to know it again: colors as shares of a white surface under the rig's lamp. */
export function lookOfStone(
  cv: OpenCv,
  photo: Photo,
  { outline, lengthPx, widthPx, areaPx }: StoneShape,
  { mmPerPx, lampRadiance, lampColor, sourceSlope, light }: Rig,
): StoneLook {
  const crop = stoneCrop(photo, outline, mmPerPx, lampColor ?? [1, 1, 1], ENOUGH_PX_PER_MM.look);
  const cosTheta = Math.sqrt((1 + light.direction[2]) / 2);
  const white = whiteFacing(lampRadiance, sourceSlope, cosTheta);
  const look = stoneLook(
    crop.stone,
    crop.mask,
    mmPerPx * crop.factor,
    white,
    {
      silhouette: silhouette(outline),
      size: [lengthPx * mmPerPx, widthPx * mmPerPx, areaPx * mmPerPx ** 2],
    },
    (raster, sigmaPx) => wideBlur(cv, raster, sigmaPx),
  );
  const [length, width, area] = look.size;
  return {
    colors: look.colors.map(toHundredths),
    pattern: look.pattern.map(toThousandths),
    silhouette: look.silhouette.map(toThousandths),
    size: [toHundredths(length), toHundredths(width), toHundredths(area)],
  };
}

/** Far finer than two photos of one stone agree; journals hold many thousands of these. */
const toHundredths = (value: number) => Math.round(100 * value) / 100;
const toThousandths = (value: number) => Math.round(1000 * value) / 1000;
