import { simplifyOutline } from '../measure/simplifyOutline';
import { outwardNormals, signedArea, smoothOutline } from '../measure/smoothOutline';
import { snapOutline } from '../measure/snapOutline';
import { distanceToEdge } from '../vision/distanceToEdge';
import type { OpenCv } from '../vision/openCv';
import { outerOutline } from '../vision/outerOutline';
import { smallestRectangle } from '../vision/smallestRectangle';
import { closeByDisc, openByDisc } from './discMorphology';
import type { StonePiece } from './findStones';
import { widened } from './regrowStones';
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
const BAY_SHARE = 0.8;
/** Spurs narrower than this share of the stone's half-width are cut off: they are shadow or a neighbor's. */
const SPUR_SHARE = 0.25;
/** Smoothing along the outline before and after it is moved onto the edge, small-picture pixels. */
const SIGMA = { before: 1.6, after: 1.2 };
/** How often the outline is moved onto the edge: around a bright stone on black it starts several pixels outside. */
const SNAPS = 1;
/** A corner is left out when the outline stays this close without it, small-picture pixels. */
const TOLERANCE_PX = 0.15;

/** Outline, center and size of a stone found in the small picture, in photo pixels. */
export function stoneShape(cv: OpenCv, piece: StonePiece, factor: number): StoneShape {
  const rim = rounded(cv, piece);
  const full = (at: number) => (at + 0.5) * factor - 0.5;
  const outline = onEdge(rim, piece.picture).map(([row, column]): PixelPoint => [full(row), full(column)]);
  const { lengthPx, widthPx } = smallestRectangle(cv, outline);
  return { outline, center: centroid(outline), areaPx: Math.abs(signedArea(outline)), lengthPx, widthPx };
}

/** Rim pixels of the piece in the small picture, spurs cut off and bays closed. */
function rounded(cv: OpenCv, piece: StonePiece): PixelPoint[] {
  const depth = distanceToEdge(cv, piece.mask).data;
  const halfWidth = depth.reduce((most, value) => Math.max(most, value), 0);
  const area = piece.mask.data.reduce((sum, inside) => sum + inside, 0);
  const bay = BAY_SHARE * Math.sqrt(area / Math.PI);
  const wide = widened(piece, Math.ceil(bay) + 2);
  const body = openByDisc(cv, wide.mask, SPUR_SHARE * halfWidth);
  const rim = outerOutline(cv, closeByDisc(cv, body, bay));
  return rim.map(([row, column]): PixelPoint => [row + wide.box.row, column + wide.box.column]);
}

/** The smooth line along the mask's edge, half a pixel outside its rim pixels, moved onto the picture's edge. */
function onEdge(rim: readonly PixelPoint[], picture: StonePiece['picture']): PixelPoint[] {
  const smooth = smoothOutline(rim, SIGMA.before);
  const normals = outwardNormals(smooth);
  let edge = smooth.map(([row, column], i): PixelPoint => {
    const [down, right] = normals[i]!;
    return [row + 0.5 * down, column + 0.5 * right];
  });
  for (let round = 0; round < SNAPS; round++) {
    edge = smoothOutline(snapOutline(picture, edge, outwardNormals(edge)), SIGMA.after);
  }
  return simplifyOutline(edge, TOLERANCE_PX).map(
    ([row, column]): PixelPoint => [
      Math.min(picture.height - 0.5, Math.max(-0.5, row)),
      Math.min(picture.width - 0.5, Math.max(-0.5, column)),
    ],
  );
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
