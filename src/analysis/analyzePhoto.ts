import { warning } from '../image/notice';
import type { Photo } from '../image/photo';
import { BALL_INDEX } from '../measure/ballLamp';
import { whiteFacing } from '../measure/bodyReflectance';
import type { HighlightLight } from '../measure/highlightScene';
import { lampSeenFrom, type SeenLamp } from '../measure/lampSeenFrom';
import { inViewFrame, viewDirection } from '../measure/viewDirection';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import { combine, normalize, type Vector } from '../optics/vector';
import type { Engines } from '../vision/openEngines';
import { ballChecks } from './ballChecks';
import { type HeldRig, holdRig } from './holdRig';
import { locateTray } from './locateTray';
import { lookOfStone } from './lookOfStone';
import { loosenBound } from './loosenBound';
import { mirrorsSecondLight } from './mirrorsSecondLight';
import type { AnalysisOptions, Watch } from './options';
import { photoChecks } from './photoChecks';
import { readScene } from './readScene';
import type { HighlightReport, PhotoReport, PixelPoint, Rig, StoneReport } from './report';
import { isFault, laySecondLamp, type SecondLamp } from './secondLamp';
import { skinReport } from './skinReport';
import { type StoneCrop, stoneCrop } from './stoneCrop';
import { stoneFlaws } from './stoneFlaws';
import { stoneGloss } from './stoneGloss';
import type { StoneShape } from './stoneShape';
import { toneSd } from './toneSd';
import { widenGloss } from './widenGloss';

/**
 * Measures all stones of one photo: ball, rig, stones, then highlight and flaws of each.
 *
 * @param photo - The upright photo.
 * @param options - Ball or rig.
 * @param engines - OpenCV and the flaw network.
 * @param watch - Told about progress; what it throws stops the analysis.
 * @param lampMoved - The same tray photographed with the lamp elsewhere; null for none.
 * @returns Everything measured, independent of step and material.
 * @throws Refusal `no-ball` without a ball and a rig, `out-of-focus`, `too-dark`, `low-resolution`, `no-stone`.
 */
export async function analyzePhoto(
  photo: Photo,
  options: AnalysisOptions,
  engines: Engines,
  watch: Watch,
  lampMoved: Photo | null = null,
): Promise<PhotoReport> {
  const { cv } = engines;
  const tray = await locateTray(photo, options, cv, watch);
  const { small, reading, own, expected, pieces, stones: shaped } = tray;
  const other = lampMoved && (await laySecondLamp({ photo, tray }, lampMoved, options, cv, watch));
  const second = other && !isFault(other) ? other : null;
  const seen = readScene(cv, photo, small, pieces, reading?.ball ?? null);
  const held = holdRig(own, seen, options.rig) ?? { ...UNCHECKED, rig: expected };
  const { rig } = held;
  const ballAt: PixelPoint | null = reading
    ? [reading.ball.row, reading.ball.column]
    : (rig.scene?.ballAt ?? null);
  const lampShare = 1 - (seen.roomShare ?? rig.scene?.roomShare ?? 0);
  const light = reading && ballChecks(photo, reading);
  const secondLights = (light?.secondLights ?? []).map(({ direction }) => direction);
  const scene: Scene = { photo, held, rig, engines, ballAt, lampShare, secondLights, second };
  const stones: StoneReport[] = [];
  for (const [i, { shape, cutOff }] of shaped.entries()) {
    await watch('highlights', i / shaped.length);
    stones.push(await measureStone(scene, shape, cutOff, i + 1));
  }
  await watch('flaws', 1);
  return {
    widthPx: photo.widthPx,
    heightPx: photo.heightPx,
    mmPerPx: rig.mmPerPx,
    ball: reading?.ball ?? null,
    light: rig.light,
    rig,
    rigCheck: held.check,
    ...(secondLights.length > 0 ? { secondLights } : {}),
    ...(second ? { lampMoved: { inBoth: second.inBoth, turnDeg: second.turnDeg } } : {}),
    warnings: [
      ...held.warnings,
      ...(other && isFault(other) ? [warning(other)] : []),
      ...photoChecks({ photo, small, reading, light, rig, stones }),
    ],
    stones,
  };
}

const WITHHELD = { highlight: null, bound: null, skin: null } as const;
const UNCHECKED = { radianceSd: 0, isMoved: false, check: null, warnings: [] } as const;

interface Scene {
  readonly photo: Photo;
  readonly held: HeldRig;
  readonly rig: Rig;
  readonly engines: Engines;
  /** Where the ball lies, or lay when the rig was read; null when nobody knows. */
  readonly ballAt: PixelPoint | null;
  /** Share of the tray's light that comes from the lamp. */
  readonly lampShare: number;
  /** Directions to sources of light beside the lamp. */
  readonly secondLights: readonly Vector[];
  readonly second: SecondLamp | null;
}

async function measureStone(
  scene: Scene,
  shape: StoneShape,
  cutOff: boolean,
  id: number,
): Promise<StoneReport> {
  const { photo, held, rig, engines, lampShare } = scene;
  const crop = stoneCrop(photo, shape.outline, rig.mmPerPx, rig.lampColor ?? [1, 1, 1]);
  const view = viewDirection(photo, shape.center[0], shape.center[1]);
  const light = highlightLight(rig, lampOver(scene, shape.center, view), crop, view);
  const read = held.isMoved ? WITHHELD : stoneGloss(crop, light);
  const halves = scene.secondLights.map((direction) => halfTo(direction, view));
  const isOther = read.highlight !== null && mirrorsSecondLight(crop, read.highlight, light.half, halves);
  const { highlight: found, bound, skin } = isOther ? WITHHELD : read;
  // Several shots tell the camera's curve themselves.
  const tone =
    found && !photo.merging
      ? toneSd(found, rig.lampRadiance * fresnelReflectance(BALL_INDEX, light.half[2]))
      : 0;
  const highlight = found && widenGloss(found, Math.hypot(held.radianceSd, tone), light.half[2]);
  const { flaws, inspectedCm2 } = await stoneFlaws(engines, {
    photo,
    outline: shape.outline,
    mmPerPx: rig.mmPerPx,
    lampXy: held.isMoved ? [0, 0] : [rig.light.direction[0], rig.light.direction[1]],
    second: held.isMoved ? null : scene.second,
    white: held.isMoved ? null : whiteFacing(rig.lampRadiance, rig.sourceSlope, light.half[2]),
  });
  return {
    id,
    center: shape.center,
    outline: shape.outline,
    areaMm2: shape.areaPx * rig.mmPerPx ** 2,
    lengthMm: shape.lengthPx * rig.mmPerPx,
    widthMm: shape.widthPx * rig.mmPerPx,
    cutOff,
    highlight: highlight && withoutRoom(highlight, lampShare),
    glossBound: bound && loosenBound(bound, held.radianceSd),
    ...(skin ? { skin: skinReport(skin, crop, rig.mmPerPx) } : {}),
    flaws,
    inspectedCm2,
    look: lookOfStone(engines.cv, crop, shape, rig),
    ...(held.isMoved ? { glossWithheld: true } : isOther ? { glossWithheld: 'second-light' } : {}),
  };
}

/** The body was held against the lamp alone; what the room adds is taken off. */
function withoutRoom(highlight: HighlightReport, lampShare: number): HighlightReport {
  const body = highlight.bodyReflectance ?? null;
  return { ...highlight, bodyReflectance: body && body * lampShare };
}

/** The lamp as a place in the photo sees it; unchanged when nobody knows where the ball lay. */
function lampOver({ photo, rig, ballAt }: Scene, [row, column]: PixelPoint, view: Vector): SeenLamp {
  const atBall = { direction: rig.light.direction, sourceSlope: rig.sourceSlope };
  if (!ballAt) return atBall;
  const offset = [(column - ballAt[1]) * rig.mmPerPx, (ballAt[0] - row) * rig.mmPerPx] as const;
  return lampSeenFrom(atBall, offset, { ball: viewDirection(photo, ballAt[0], ballAt[1]), place: view });
}

/** Unit vector halfway between a light and the camera, z to the camera. */
const halfTo = (direction: Vector, view: Vector) =>
  inViewFrame(normalize(combine([1, direction], [1, view])), view);

function highlightLight(rig: Rig, lamp: SeenLamp, crop: StoneCrop, view: Vector): HighlightLight {
  // Averaging k × k pixels adds a box of variance (k² − 1) / 12.
  const blurPx = Math.sqrt(rig.blurPx ** 2 + (crop.factor ** 2 - 1) / 12) / crop.factor;
  const half = halfTo(lamp.direction, view);
  const { lampRadiance, lampTurnRad } = rig;
  return { lampRadiance, sourceSlope: lamp.sourceSlope, lampTurnRad, blurPx, half };
}
