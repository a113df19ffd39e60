import type { Box, Mask, Raster } from '../image/raster';
import { ballShadow, USUAL_SHADOW } from '../measure/ballShadow';
import type { Circle } from '../measure/circleFit';
import { edgeRelief } from '../measure/edgeRelief';
import { shadowSeeds } from '../measure/shadowSeeds';
import { stoneSeeds } from '../measure/stoneSeeds';
import { trayDifference } from '../measure/trayModel';
import { cheapestMarker } from '../vision/cheapestMarker';
import { gaussianBlur } from '../vision/gaussianBlur';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import { openMask } from '../vision/openMask';
import { fillHoles } from './fillHoles';
import { splitTouching } from './splitTouching';

const TRAY = 1;
const STONE = 2;
const BALL = 3;
/** Smallest stone, share of the picture's area. */
const LEAST_STONE_SHARE = 0.0004;
/** Smallest seed, pixels. */
const LEAST_SEED_PX = 10;
/** A patch of tray enclosed by stones counts as tray from this share of the picture's area on. */
const LEAST_TRAY_SHARE = 0.02;
/** Blur before the edges that the flood follows, pixels: wide enough to bring the tray's grain below faint outlines. */
const SMOOTH_SIGMA_PX = 2;
/** Cost of a step over even ground, in steps over an edge `EDGE_TIMES_USUAL` times as strong as the usual one. */
const STEP_COST = 0.1;
const EDGE_TIMES_USUAL = 3;
/** The ball's disc is cleared a little past its rim. */
const BALL_MARGIN = 1.05;

/** Unit vector in the picture toward the lamp: x right, y up. */
export type LampSide = readonly [x: number, y: number];

/** A stone's mask and where in the picture it lies. */
export interface StonePiece {
  readonly box: Box;
  /** Of the box's size. */
  readonly mask: Mask;
}

/**
 * Finds the stones of a tray in a small picture.
 *
 * Pixels that are surely stone and surely tray are flooded toward each other over the edges, so that soft
 * shadows fall to the tray and a stone as gray as the tray still ends at its outline.
 *
 * @param cv - OpenCV.
 * @param small - RGB raster in linear light.
 * @param ball - The reference ball in it, or null.
 * @param lampSide - Where the lamp is, or null when nothing tells.
 * @returns One piece per stone, touching stones apart.
 */
export function findStones(
  cv: OpenCv,
  small: Raster,
  ball: Circle | null,
  lampSide: LampSide | null,
): StonePiece[] {
  const { width, height } = small;
  const { labels } = stonePicture(cv, small, ball, lampSide);
  const found: Mask = { width, height, data: Uint8Array.from(labels, (label) => (label === STONE ? 1 : 0)) };
  const whole = openMask(cv, fillHoles(cv, found), 2);
  const leastPx = LEAST_STONE_SHARE * width * height;
  const { labels: pieces, components } = labelComponents(cv, whole);
  return components
    .filter((component) => component.areaPx >= leastPx)
    .flatMap(({ label, box }) => {
      const mask = cutOut(pieces, label, width, box);
      return splitTouching(cv, mask).map((piece) => ({ box, mask: piece }));
    })
    .filter(({ mask }) => mask.data.reduce((sum, inside) => sum + inside, 0) >= leastPx);
}

export function stonePicture(
  cv: OpenCv,
  small: Raster,
  ball: Circle | null,
  lampSide: LampSide | null,
): { markers: Int32Array; labels: Int32Array } {
  const { width, height } = small;
  const difference = trayDifference(gaussianBlur(cv, small, 1));
  const shadow = ball ? ballShadow(difference, ball) : USUAL_SHADOW;
  const edges = edgeRelief(difference);
  const seeds = stoneSeeds(difference, edges, shadow);
  const shaded = lampSide ? openMask(cv, shadowSeeds(difference, edges, shadow, seeds, lampSide), 1) : null;
  const ballDisc = ball ? disc(ball, width, height) : null;
  const stoneSeed = keepComponents(cv, openMask(cv, without(seeds.stone, ballDisc), 1), LEAST_SEED_PX);
  const traySeed = keepComponents(
    cv,
    openMask(cv, without(seeds.tray, ballDisc), 4),
    LEAST_TRAY_SHARE * width * height,
  );
  const markers = new Int32Array(width * height);
  for (let i = 0; i < markers.length; i++) {
    markers[i] = ballDisc?.data[i]
      ? BALL
      : stoneSeed.data[i]
        ? STONE
        : traySeed.data[i] || shaded?.data[i]
          ? TRAY
          : 0;
  }
  const smoothEdges = edgeRelief(trayDifference(gaussianBlur(cv, small, SMOOTH_SIGMA_PX)));
  return { markers, labels: cheapestMarker(crossingCost(smoothEdges), markers) };
}

/** Cost of a step: little on even ground, the square of the edge's strength on an outline. */
function crossingCost(edges: Raster): Raster {
  const usual = edges.data.slice().sort()[edges.data.length >> 1]!;
  return {
    ...edges,
    data: edges.data.map((edge) => STEP_COST + (edge / (EDGE_TIMES_USUAL * usual + 1e-6)) ** 2),
  };
}

function disc(ball: Circle, width: number, height: number): Mask {
  const data = new Uint8Array(width * height);
  for (let i = 0; i < data.length; i++) {
    const apart = Math.hypot(Math.floor(i / width) - ball.row, (i % width) - ball.column);
    if (apart <= BALL_MARGIN * ball.radiusPx) data[i] = 1;
  }
  return { width, height, data };
}

function without(mask: Mask, taken: Mask | null): Mask {
  return taken ? { ...mask, data: mask.data.map((inside, i) => (taken.data[i] ? 0 : inside)) } : mask;
}

function keepComponents(cv: OpenCv, mask: Mask, leastPx: number): Mask {
  const { labels, components } = labelComponents(cv, mask);
  const kept = new Set(components.filter((c) => c.areaPx >= leastPx).map((c) => c.label));
  return { ...mask, data: Uint8Array.from(labels, (label) => (kept.has(label) ? 1 : 0)) };
}

function cutOut(labels: Int32Array, wanted: number, pictureWidth: number, box: Box): Mask {
  const data = new Uint8Array(box.width * box.height);
  for (let y = 0, i = 0; y < box.height; y++) {
    const from = (box.row + y) * pictureWidth + box.column;
    for (let x = 0; x < box.width; x++, i++) data[i] = labels[from + x] === wanted ? 1 : 0;
  }
  return { width: box.width, height: box.height, data };
}
