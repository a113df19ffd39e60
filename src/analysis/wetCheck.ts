import { fillPolygon } from '../image/fillPolygon';
import { type PlaceMark, type Warning, warningAt } from '../image/notice';
import type { Photo } from '../image/photo';
import type { Mask } from '../image/raster';
import type { ShrunkPhoto } from '../image/shrinkPhoto';
import type { BrightPatch } from '../measure/brightPatches';
import type { HighlightLight } from '../measure/highlightScene';
import { shrinkMask } from '../measure/shrinkMask';
import { trayGlints } from '../measure/trayGlints';
import { inViewFrame, viewDirection } from '../measure/viewDirection';
import { waterGlints } from '../measure/waterGlints';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import { combine, normalize } from '../optics/vector';
import type { BallReport, Rig, StoneReport } from './report';
import { ENOUGH_PX_PER_MM, stoneCrop } from './stoneCrop';

/** A photo that may be wet. */
export interface WetPhoto {
  readonly photo: Photo;
  readonly small: ShrunkPhoto;
  readonly rig: Rig;
  readonly ball: BallReport | null;
  /** Radiance of the room around. */
  readonly room: number;
  readonly stones: readonly StoneReport[];
}

const WATER_INDEX = 1.333;
/** A stone's rim is left out: share of its radius. */
const RIM_SHARE = 0.08;
/** Drops that make a stone wet, and a tray; one alone may be a crystal. */
const FEWEST = { beads: 2, glints: 2 };
/** Signs that make a wet photo: each wet stone and each drop on the tray is one, a lone drop on a stone half of one. */
const FEWEST_SIGNS = 1.5;
/** Who rinses stones wets them all: share of a tray's stones that look wet. */
const LEAST_SHARE = 0.25;
/** Surroundings of stones and ball in which edges are no tray, mm. */
const MARGIN_MM = 1.2;
const MARK_MM = 1.2;
const MOST_MARKS = 6;

/**
 * Tells from the lamp's images in water, on the stones and on the tray, whether a photo was taken wet.
 *
 * @param wet - The photo and what was found in it.
 * @returns The warning with the wet stones and the drops on the tray; empty when all is dry.
 * @see Common practice: judge stones dry; water fills scratches and fakes a polish.
 */
export function wetCheck(wet: WetPhoto): Warning[] {
  const { rig, stones } = wet;
  const sheet = rig.lampRadiance * Math.sin((rig.light.angularDiameterDeg * Math.PI) / 360) ** 2 + wet.room;
  const signs = stones.map((stone) => ({ id: stone.id, sign: wetSign(wet, stone, sheet) }));
  const glints = wet.ball === null ? [] : dropsOnTray(wet, sheet);
  const sum = signs.reduce((total, { sign }) => total + sign, glints.length);
  const enough = stones.length === 1 ? 1 : Math.max(FEWEST_SIGNS, LEAST_SHARE * stones.length);
  if (sum < enough && glints.length < FEWEST.glints) return [];
  const ids = signs.filter(({ sign }) => sign > 0).map(({ id }) => id);
  const marks = glints.slice(0, MOST_MARKS);
  return [warningAt('wet-stones', { ...(marks.length > 0 ? { marks } : {}), stones: ids })];
}

/** 1 for a wet stone, ½ for a lone drop, 0 for a dry one. */
function wetSign({ photo, rig }: WetPhoto, { outline, center }: StoneReport, sheet: number): number {
  const crop = stoneCrop(photo, outline, rig.mmPerPx, rig.lampColor ?? [1, 1, 1], ENOUGH_PX_PER_MM.water);
  const area = crop.mask.data.reduce((sum, inside) => sum + inside, 0);
  const mask = shrinkMask(crop.mask, Math.max(2, Math.round(RIM_SHARE * Math.sqrt(area / Math.PI))));
  const view = viewDirection(photo, center[0], center[1]);
  const light: HighlightLight = {
    lampRadiance: rig.lampRadiance,
    sourceSlope: rig.sourceSlope,
    lampTurnRad: rig.lampTurnRad,
    blurPx: Math.sqrt(rig.blurPx ** 2 + (crop.factor ** 2 - 1) / 12) / crop.factor,
    half: inViewFrame(normalize(combine([1, rig.light.direction], [1, view])), view),
  };
  const { film, beads, outshone } = waterGlints(crop.stone, mask, light, sheet);
  if (outshone) return 0;
  return film !== null || beads.length >= FEWEST.beads ? 1 : beads.length / FEWEST.beads;
}

function dropsOnTray({ small, rig, ball, stones }: WetPhoto, sheet: number): PlaceMark[] {
  const mmPerPx = rig.mmPerPx * small.factor;
  const tray = bareTray(small, stones, ball, MARGIN_MM / rig.mmPerPx);
  const water =
    rig.lampRadiance * fresnelReflectance(WATER_INDEX, Math.sqrt((1 + rig.light.direction[2]) / 2));
  return trayGlints(small.raster, tray, { water, sheet, mmPerPx }).map((patch) =>
    inPhoto(patch, small.factor, rig),
  );
}

function inPhoto({ row, column, pixels }: BrightPatch, factor: number, rig: Rig): PlaceMark {
  const full = (at: number) => (at + 0.5) * factor - 0.5;
  const radiusPx = Math.max(factor * Math.sqrt(pixels.length / Math.PI), MARK_MM / rig.mmPerPx);
  return { row: full(row), column: full(column), radiusPx };
}

/** Pixels of the small picture outside all stones and the ball, with a margin around them. */
function bareTray(
  { raster, factor }: ShrunkPhoto,
  stones: readonly StoneReport[],
  ball: BallReport | null,
  marginPx: number,
): Mask {
  const { width, height } = raster;
  const tray: Mask = { width, height, data: new Uint8Array(width * height).fill(1) };
  const small = (at: number) => (at + 0.5) / factor - 0.5;
  const outlines = stones.map(({ outline, center }) =>
    outline.map((point) => outward(point, center, marginPx)),
  );
  if (ball) {
    const reach = 1.15 * ball.radiusPx + marginPx;
    outlines.push(
      Array.from({ length: 40 }, (_, k) => [
        ball.row + reach * Math.sin((k * Math.PI) / 20),
        ball.column + reach * Math.cos((k * Math.PI) / 20),
      ]),
    );
  }
  for (const outline of outlines) {
    const inside = fillPolygon(
      outline.map(([row, column]) => [small(row), small(column)] as const),
      width,
      height,
    );
    inside.data.forEach((value, i) => {
      if (value) tray.data[i] = 0;
    });
  }
  return tray;
}

function outward(
  point: readonly [number, number],
  from: readonly [number, number],
  px: number,
): [number, number] {
  const [down, right] = [point[0] - from[0], point[1] - from[1]];
  const grown = 1 + px / Math.max(1, Math.hypot(down, right));
  return [from[0] + grown * down, from[1] + grown * right];
}
