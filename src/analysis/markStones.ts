import { maskWhere } from '../image/maskWhere';
import type { Mask, Raster } from '../image/raster';
import { gaussianBlur } from '../kernels/gaussianBlur';
import { openMask } from '../kernels/openMask';
import { ballShadow } from '../measure/ballShadow';
import type { Circle } from '../measure/circleFit';
import { edgeRelief, grainEdge } from '../measure/edgeRelief';
import { lampLines, shadowShare } from '../measure/lampLines';
import { isShaded, lampSideSeeds } from '../measure/lampSideSeeds';
import { photoShadow } from '../measure/photoShadow';
import { shadowSeeds } from '../measure/shadowSeeds';
import { stoneSeeds } from '../measure/stoneSeeds';
import { textureSeeds } from '../measure/textureSeeds';
import { type TrayDifference, trayDifference } from '../measure/trayDifference';
import { distanceToEdge } from '../vision/distanceToEdge';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import { bareTray } from './bareTray';
import { fillHoles } from './fillHoles';

/** What a marked pixel surely belongs to; 0 is undecided. */
export const TRAY = 1;
export const STONE = 2;
export const BALL = 3;

/** Unit vector in the picture toward the lamp: x right, y up. */
export type LampSide = readonly [x: number, y: number];

/** Pixels that are surely tray, stone or ball, and the edges between them. */
export interface MarkedPicture {
  readonly markers: Int32Array;
  /** Edge strength in ln units per pixel, the tray's grain smoothed away. */
  readonly edges: Raster;
  /** Everything that is clearly not plain lit tray: stones and shadows, holes filled. */
  readonly area: Mask;
  /** Pixels that look like tray in full shadow; empty when no ball shows how dark that is. */
  readonly shaded: Mask;
}

/** Around a bright stone on black the blur's faint tail must not count as its edge: the floor before logarithms is this many times higher. */
const FLOOR_TIMES = 6;
/** Smallest seed, pixels. */
const LEAST_SEED_PX = 10;
/** Smallest seed that only its place toward the lamp gives away, share of the picture's area. */
const LEAST_LIT_SHARE = 0.0003;
/** A patch of tray enclosed by stones counts as tray from this share of the picture's area on. */
const LEAST_TRAY_SHARE = 0.006;
/** Blur before the edges that a flood follows: below it faint outlines drown in grain. */
const EDGE_SIGMA_PX = 2;
/** The ball's disc is cleared a little past its rim. */
const BALL_MARGIN = 1.05;
/** Departures from the tray that only a stone or a shadow makes, ln units, and edges in times the usual one. */
const UNLIKE_TRAY = { lightness: 0.15, lightnessSds: 4, chroma: 0.3, chromaSds: 6, edgeTimesUsual: 8 };

/**
 * Marks what is surely stone and what is surely tray in a small picture.
 *
 * @param cv - OpenCV.
 * @param small - RGB raster in linear light.
 * @param ball - The reference ball in it, or null.
 * @param lampSide - Where the lamp is, or null when nothing tells.
 * @returns Markers, one of `TRAY`, `STONE`, `BALL` or 0 a pixel, and edges.
 */
export function markStones(
  cv: OpenCv,
  small: Raster,
  ball: Circle | null,
  lampSide: LampSide | null,
): MarkedPicture {
  const { model: tray, difference } = bareTray(small);
  const soft = gaussianBlur(small, EDGE_SIGMA_PX);
  const smooth = trayDifference(soft, tray);
  const area = stonesWithShadows(cv, smooth);
  const depth = distanceToEdge(cv, area);
  const lines = lampLines(area, lampSide ?? [0, 1]);
  const shadow = ball ? ballShadow(difference, ball, lampSide) : photoShadow(difference, lines);
  const edges = edgeRelief(difference);
  const seeds = stoneSeeds(difference, edges, shadow);
  const disc = ball && ballDisc(ball, small);
  // What stands out of the tray only by a little, and not by its surroundings, is the tray's grain or light thrown on it.
  const standsOut = maskWhere(
    small.width,
    small.height,
    (i) => seeds.stone.data[i] === 1 && area.data[i] === 1,
  );
  const stone = keepComponents(cv, openMask(without(standsOut, disc), 1), LEAST_SEED_PX);
  const leastTrayPx = LEAST_TRAY_SHARE * small.width * small.height;
  const bare = keepComponents(cv, openMask(without(seeds.tray, disc), 4), leastTrayPx);
  const patterned = openMask(without(textureSeeds(difference, smooth, depth), disc), 3);
  const stones = [stone, patterned];
  const trays = [bare];
  if (lampSide) {
    const share = shadowShare(lines, ball, small.width);
    const lit = lampSideSeeds(lines, depth, difference, edges, shadow, share);
    const dark = shadowSeeds(difference, edges, shadow, seeds, lampSide, lines, share);
    stones.push(keepComponents(cv, openMask(lit.stone, 2), LEAST_LIT_SHARE * small.width * small.height));
    trays.push(lit.shade, openMask(dark, 1));
  }
  const shaded = (i: number) => shadow.isRead && isShaded(difference, edges, shadow, i);
  return {
    markers: marked(disc, stones, trays),
    edges: edgeRelief(trayDifference(soft, { ...tray, floor: edgeFloor(tray.floor) })),
    area,
    shaded: maskWhere(small.width, small.height, shaded),
  };
}

const edgeFloor = ([r, g, b]: readonly [number, number, number]) =>
  [FLOOR_TIMES * r, FLOOR_TIMES * g, FLOOR_TIMES * b] as const;

function marked(ball: Mask | null, stones: readonly Mask[], trays: readonly Mask[]): Int32Array {
  const markers = new Int32Array(stones[0]!.data.length);
  const mark = (mask: Mask, value: number) => {
    for (let i = 0; i < markers.length; i++) if (mask.data[i] && markers[i] === 0) markers[i] = value;
  };
  if (ball) mark(ball, BALL);
  for (const mask of stones) mark(mask, STONE);
  for (const mask of trays) mark(mask, TRAY);
  return markers;
}

/** Everything that is not plain tray: stones and shadows, each area with its holes filled. */
function stonesWithShadows(cv: OpenCv, smooth: TrayDifference): Mask {
  const { width, height, lightness, redGreen, blueGreen, lightnessSd, chromaSd } = smooth;
  const relief = edgeRelief(smooth, 0);
  const edges = relief.data;
  const leastEdge = UNLIKE_TRAY.edgeTimesUsual * grainEdge(relief);
  const leastLight = Math.max(UNLIKE_TRAY.lightness, UNLIKE_TRAY.lightnessSds * lightnessSd);
  const leastChroma = Math.max(UNLIKE_TRAY.chroma, UNLIKE_TRAY.chromaSds * chromaSd);
  const data = new Uint8Array(width * height);
  for (let i = 0; i < data.length; i++) {
    const chroma2 = redGreen[i]! ** 2 + blueGreen[i]! ** 2;
    const differs =
      Math.abs(lightness[i]!) > leastLight || chroma2 > leastChroma ** 2 || edges[i]! > leastEdge;
    data[i] = differs ? 1 : 0;
  }
  return openMask(fillHoles(cv, { width, height, data }), 4);
}

function ballDisc(ball: Circle, { width, height }: Raster): Mask {
  const data = new Uint8Array(width * height);
  const reach2 = (BALL_MARGIN * ball.radiusPx) ** 2;
  for (let row = 0, i = 0; row < height; row++) {
    const down2 = (row - ball.row) ** 2;
    for (let column = 0; column < width; column++, i++) {
      if (down2 + (column - ball.column) ** 2 <= reach2) data[i] = 1;
    }
  }
  return { width, height, data };
}

function without(mask: Mask, taken: Mask | null): Mask {
  return taken ? maskWhere(mask.width, mask.height, (i) => !!mask.data[i] && !taken.data[i]) : mask;
}

function keepComponents(cv: OpenCv, mask: Mask, leastPx: number): Mask {
  const { labels, components } = labelComponents(cv, mask);
  const kept = Uint8Array.from([0, ...components.map(({ areaPx }) => (areaPx >= leastPx ? 1 : 0))]);
  return maskWhere(mask.width, mask.height, (i) => kept[labels[i]!] === 1);
}
