import sharp from 'sharp';
import { decodeFile } from '../../src/cli/decodeFile';
import { cropLinear } from '../../src/image/cropLinear';
import { sCurve, shoot } from './shoot';

/**
 * A JPEG of a photo's scene at another exposure, through a contrast curve.
 *
 * @param path - Of the photo, taken for a scene of known light.
 * @param gain - Light let in as a share of the photo's.
 */
export async function shotFile(path: string, gain: number): Promise<Buffer> {
  const photo = await decodeFile(path);
  const { widthPx: width, heightPx: height } = photo;
  const scene = cropLinear(photo, { row: 0, column: 0, width, height });
  const { rgba } = shoot(scene, gain, { curve: sCurve(0.4) });
  return sharp(rgba, { raw: { width, height, channels: 4 } })
    .jpeg({ quality: 93 })
    .toBuffer();
}
