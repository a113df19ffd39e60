import { signedArea, smoothOutline } from '../measure/smoothOutline';
import { closeMask } from '../vision/closeMask';
import type { OpenCv } from '../vision/openCv';
import { outerOutline } from '../vision/outerOutline';
import { smallestRectangle } from '../vision/smallestRectangle';
import type { StonePiece } from './findStones';
import type { PixelPoint } from './report';

/** A stone's place and size in the photo. */
export interface StoneShape {
  readonly outline: readonly PixelPoint[];
  readonly center: PixelPoint;
  readonly areaPx: number;
  readonly lengthPx: number;
  readonly widthPx: number;
}

/** Bays narrower than this share of the stone's radius are closed: tumbled stones have none, dark flaws at the rim do. */
const BAY_SHARE = 0.35;

/** Outline, center and size of a stone found in the small picture, in photo pixels. */
export function stoneShape(cv: OpenCv, piece: StonePiece, factor: number): StoneShape {
  const areaSmall = piece.mask.data.reduce((sum, inside) => sum + inside, 0);
  const bay = Math.max(1, Math.round(BAY_SHARE * Math.sqrt(areaSmall / Math.PI)));
  const wide = withMargin(piece, bay + 2);
  const rim = outerOutline(cv, closeMask(cv, wide.mask, bay));
  const full = (at: number) => (at + 0.5) * factor - 0.5;
  const outline = smoothOutline(rim).map(
    ([row, column]): PixelPoint => [full(row + wide.box.row), full(column + wide.box.column)],
  );
  const { lengthPx, widthPx } = smallestRectangle(cv, outline);
  return { outline, center: centroid(outline), areaPx: Math.abs(signedArea(outline)), lengthPx, widthPx };
}

function withMargin({ box, mask }: StonePiece, margin: number): StonePiece {
  const width = box.width + 2 * margin;
  const height = box.height + 2 * margin;
  const data = new Uint8Array(width * height);
  for (let y = 0; y < box.height; y++) {
    data.set(mask.data.subarray(y * box.width, (y + 1) * box.width), (y + margin) * width + margin);
  }
  const wider = { row: box.row - margin, column: box.column - margin, width, height };
  return { box: wider, mask: { width, height, data } };
}

/** Center of gravity of a polygon's area. */
function centroid(points: readonly PixelPoint[]): PixelPoint {
  let row = 0;
  let column = 0;
  let total = 0;
  points.forEach(([r, c], i) => {
    const [nextR, nextC] = points[(i + 1) % points.length]!;
    const twice = c * nextR - nextC * r;
    total += twice;
    row += (r + nextR) * twice;
    column += (c + nextC) * twice;
  });
  return [row / (3 * total), column / (3 * total)];
}
