import { cropLinear } from '../image/cropLinear';
import { luminance } from '../image/luminance';
import type { Photo } from '../image/photo';
import type { Box, Mask } from '../image/raster';
import type { ShrunkPhoto } from '../image/shrinkPhoto';
import { ballShadow, USUAL_SHADOW } from '../measure/ballShadow';
import type { Circle } from '../measure/circleFit';
import { shadowCast } from '../measure/shadowCast';
import { sharpestEdge } from '../measure/sharpestEdge';
import { trayLight } from '../measure/trayLight';
import { type BareTray, bareTray } from './bareTray';
import type { StonePiece } from './findStones';
import type { BallReport, PixelPoint, RigScene } from './report';

/** Longest side of the piece of photo in which edges are read, pixels. */
const EDGE_SIDE_PX = 640;
/** Stones at whose edges the focus is read. */
const EDGE_STONES = 4;

/**
 * Reads what a photo tells of lamp and camera beside its ball: tray, shadows, focus and size.
 *
 * @param photo - The photo in full size.
 * @param small - The same, reduced.
 * @param pieces - Its stones in the small picture.
 * @param ball - The reference ball in photo pixels, or null.
 */
export function readScene(
  photo: Photo,
  small: ShrunkPhoto,
  pieces: readonly StonePiece[],
  ball: BallReport | null,
): RigScene {
  const bare = bareTray(small.raster);
  const { shadow, roomShare } = readShadow(bare, small.factor, pieces, ball);
  return {
    widthPx: photo.widthPx,
    heightPx: photo.heightPx,
    focalLength35Mm: photo.focalLength35Mm ?? null,
    exposure: photo.exposure ?? null,
    ballAt: ball && [ball.row, ball.column],
    tray: trayLight(bare.model),
    shadow,
    ...(roomShare === null ? {} : { roomShare }),
    edgeBlurPx: readEdgeBlur(photo, small.factor, pieces),
  };
}

function readShadow(
  { difference }: BareTray,
  factor: number,
  pieces: readonly StonePiece[],
  ball: BallReport | null,
): { readonly shadow: RigScene['shadow']; readonly roomShare: number | null } {
  const { width, height } = difference;
  const circle = ball && ballInSmall(ball, factor);
  const { depth, isRead } = circle ? ballShadow(difference, circle, null) : USUAL_SHADOW;
  const darkness = difference.lightness.map((ln) => Math.min(1, Math.max(0, ln / depth)));
  const stones = takenBy(pieces, circle, difference);
  const count = pieces.length + (circle ? 1 : 0);
  const cast = shadowCast({ width, height, channels: 1, data: darkness }, stones, count);
  return {
    shadow: cast && {
      turnDeg: (cast.turnRad * 180) / Math.PI,
      reach: cast.reach,
      likeness: cast.likeness,
      at: middleOf(stones, factor),
    },
    roomShare: isRead ? Math.exp(depth) : null,
  };
}

/** Mean place of a mask's pixels, in photo pixels. */
function middleOf({ width, data }: Mask, factor: number): PixelPoint {
  let [count, rows, columns] = [0, 0, 0];
  data.forEach((inside, i) => {
    if (!inside) return;
    count++;
    rows += Math.floor(i / width);
    columns += i % width;
  });
  return [(rows / count + 0.5) * factor - 0.5, (columns / count + 0.5) * factor - 0.5];
}

/** A ball of the photo as it lies in the small picture. */
export function ballInSmall({ row, column, radiusPx }: BallReport, factor: number): Circle {
  const inSmall = (at: number) => (at + 0.5) / factor - 0.5;
  return { row: inSmall(row), column: inSmall(column), radiusPx: radiusPx / factor };
}

/** Pixels of the small picture on which stones or the ball lie. */
export function takenBy(
  pieces: readonly StonePiece[],
  ball: Circle | null,
  { width, height }: { readonly width: number; readonly height: number },
): Mask {
  const taken = unionOf(pieces, width, height);
  if (!ball) return taken;
  for (let i = 0; i < taken.data.length; i++) {
    const apart = Math.hypot(Math.floor(i / width) - ball.row, (i % width) - ball.column);
    if (apart <= ball.radiusPx) taken.data[i] = 1;
  }
  return taken;
}

function unionOf(pieces: readonly StonePiece[], width: number, height: number): Mask {
  const data = new Uint8Array(width * height);
  for (const { box, mask } of pieces) {
    mask.data.forEach((inside, i) => {
      if (inside) data[(box.row + Math.floor(i / box.width)) * width + box.column + (i % box.width)] = 1;
    });
  }
  return { width, height, data };
}

/** Blur of the sharpest edges at the largest stones, in full size; the least of them, photo pixels. */
function readEdgeBlur(photo: Photo, factor: number, pieces: readonly StonePiece[]): number | null {
  const largest = [...pieces].sort((a, b) => b.box.width * b.box.height - a.box.width * a.box.height);
  const blurs = largest
    .slice(0, EDGE_STONES)
    .map(({ box }) => sharpestEdge(luminance(cropLinear(photo, fullBox(box, factor)))))
    .filter((blur) => blur !== null);
  return blurs.length === 0 ? null : Math.min(...blurs);
}

/** The upper left part of a box of the small picture, in photo pixels. */
function fullBox(box: Box, factor: number): Box {
  const side = (length: number) => Math.min(EDGE_SIDE_PX, length * factor);
  return {
    row: box.row * factor,
    column: box.column * factor,
    width: side(box.width),
    height: side(box.height),
  };
}
