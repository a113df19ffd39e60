import type { OpenCv } from '../vision/openCv';
import { FLAW_CLASSES, type FlawNet } from '../vision/openFlawNet';
import { type FlawPlanes, flawPlanes } from './flawPlanes';
import { flawShares } from './flawShares';
import type { PixelPoint } from './report';
import type { SecondLamp } from './secondLamp';

const FRACTURE = FLAW_CLASSES.indexOf('fracture');
/** Least share, so that one photo alone cannot rule a class out. */
const LEAST = 1e-3;

/**
 * What the network says of a stone by two photos together: the geometric mean of both shares at each place.
 *
 * @param net - The network.
 * @param planes - The stone in the first photo.
 * @param own - Shares there.
 * @param outline - The stone's outline in the first photo.
 * @param second - The second photo, laid onto the first.
 * @returns 6 × rows/2 × columns/2 shares, the first photo's where the second does not reach; that of fractures never
 *   falls below the first photo's.
 */
export async function jointShares(
  cv: OpenCv,
  net: FlawNet,
  planes: FlawPlanes,
  own: Float32Array,
  outline: readonly PixelPoint[],
  second: SecondLamp,
): Promise<Float32Array> {
  const other = flawPlanes(cv, second.photo, outline.map(second.toSecond), second.mmPerPx, second.ownLampXy);
  const shares = await flawShares(net, other);
  const { width, height } = planes.mask;
  const size = width * height;
  const otherSize = other.mask.data.length;
  const joint = own.slice();
  for (let i = 0; i < size; i++) {
    const j = placeIn(other, second.toSecond(planes.toPhoto(Math.floor(i / width), i % width)));
    if (!planes.mask.data[i] || j === null) continue;
    const both = FLAW_CLASSES.map((_, k) =>
      Math.sqrt(Math.max(LEAST, own[k * size + i]!) * Math.max(LEAST, shares[k * otherSize + j]!)),
    );
    const sum = both.reduce((total, share) => total + share, 0);
    both.forEach((share, k) => {
      // A fracture is so thin that half a place beside itself it would be lost.
      const alone = k === FRACTURE ? own[k * size + i]! : 0;
      joint[k * size + i] = Math.max(alone, share / sum);
    });
  }
  return joint;
}

/** The place of a stone's map nearest to a pixel of its photo; null outside the stone. */
function placeIn({ mask, toPhoto }: FlawPlanes, [row, column]: PixelPoint): number | null {
  const [top, left] = toPhoto(0, 0);
  const [bottom, right] = toPhoto(1, 1);
  const r = Math.round((row - top) / (bottom - top));
  const c = Math.round((column - left) / (right - left));
  const isInside = r >= 0 && c >= 0 && r < mask.height && c < mask.width;
  return isInside && mask.data[r * mask.width + c] ? r * mask.width + c : null;
}
