import { warning } from '../image/notice';
import type { Photo } from '../image/photo';
import { BALL_INDEX } from '../measure/ballLamp';
import { whiteFacing } from '../measure/bodyReflectance';
import type { HighlightLight } from '../measure/highlightScene';
import { lampSeenFrom, type SeenLamp } from '../measure/lampSeenFrom';
import { inViewFrame, viewDirection } from '../measure/viewDirection';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import { combine, normalize, type Vector } from '../optics/vector';
import { ballChecks } from './ballChecks';
import { doubted, doubtWarnings } from './doubts';
import { type HeldRig, holdRig } from './holdRig';
import { locateTray, type Tray } from './locateTray';
import { lookOfStone } from './lookOfStone';
import { loosenBound } from './loosenBound';
import { mirrorsSecondLight } from './mirrorsSecondLight';
import type { AnalysisEngines, AnalysisOptions, Watch } from './options';
import { photoChecks } from './photoChecks';
import { readScene } from './readScene';
import type { HighlightReport, PhotoReport, PixelPoint, Rig, StoneReport } from './report';
import { isFault, laySecondLamp, type SecondLamp } from './secondLamp';
import { skinReport } from './skinReport';
import { type StoneCrop, stoneCrop } from './stoneCrop';
import { stoneFlaws } from './stoneFlaws';
import { type StoneGloss, stoneGloss } from './stoneGloss';
import type { StoneShape } from './stoneShape';
import { toneSd } from './toneSd';
import { unlikeStones } from './unlikeStones';
import { widenGloss } from './widenGloss';

/**
 * Measures all stones of one photo: ball, rig, stones, then highlight and flaws of each.
 *
 * @param photo - The upright photo.
 * @param options - Ball or rig.
 * @param engines - OpenCV and the flaw network, and what reads stones beside each other.
 * @param watch - Told about progress; what it throws stops the analysis.
 * @param lampMoved - The same tray photographed with the lamp elsewhere; null for none.
 * @returns Everything measured, independent of step and material.
 * @throws Refusal `no-ball` without a ball and a rig, `out-of-focus`, `too-dark`, `low-resolution`, `no-stone`.
 */
export async function analyzePhoto(
  photo: Photo,
  options: AnalysisOptions,
  engines: AnalysisEngines,
  watch: Watch,
  lampMoved: Photo | null = null,
): Promise<PhotoReport> {
  const { cv } = engines;
  const tray = await locateTray(photo, options, cv, watch);
  const { small, reading, own, expected, pieces, stones: shaped } = tray;
  const { widthPx, heightPx } = photo;
  await watch('stones', 1, { widthPx, heightPx, outlines: shaped.map(({ shape }) => shape.outline) });
  const other = lampMoved && (await laySecondLamp({ photo, tray }, lampMoved, options, cv, watch));
  const second = other && !isFault(other) ? other : null;
  const seen = readScene(photo, small, pieces, reading?.ball ?? null);
  const held = holdRig(own, seen, options.rig) ?? { ...UNCHECKED, rig: expected };
  const { rig } = held;
  const ballAt: PixelPoint | null = reading
    ? [reading.ball.row, reading.ball.column]
    : (rig.scene?.ballAt ?? null);
  const lampShare = 1 - (seen.roomShare ?? rig.scene?.roomShare ?? 0);
  const light = reading && ballChecks(photo, reading);
  const secondLights = (light?.secondLights ?? []).map(({ direction }) => direction);
  const scene: Scene = { photo, held, rig, engines, ballAt, lampShare, secondLights, second };
  await watch('highlights', 0);
  const stones: StoneReport[] = [];
  for (const [i, begun] of begunAhead(scene, shaped)) {
    await watch('highlights', i / shaped.length);
    stones.push(await measureStone(scene, begun, i + 1));
  }
  await watch('flaws', 1);
  const unlike = held.isMoved ? stones.map(() => null) : unlikeStones({ small, tray, rig, scene: seen });
  const warnings = [
    ...held.warnings,
    ...(other && isFault(other) ? [warning(other)] : []),
    ...photoChecks({ photo, small, reading, light, rig, stones }),
    ...doubtWarnings({ own, scene: seen, reading, stones, unlike }),
  ];
  return {
    widthPx,
    heightPx,
    mmPerPx: rig.mmPerPx,
    ball: reading?.ball ?? null,
    light: rig.light,
    rig,
    rigCheck: held.check,
    ...(secondLights.length > 0 ? { secondLights } : {}),
    ...(second ? { lampMoved: { inBoth: second.inBoth, turnDeg: second.turnDeg } } : {}),
    warnings,
    stones: doubted(stones, unlike, warnings),
  };
}

const WITHHELD = { highlight: null, bound: null, skin: null } as const;
const UNCHECKED = { radianceSd: 0, isMoved: false, check: null, warnings: [] } as const;

interface Scene {
  readonly photo: Photo;
  readonly held: HeldRig;
  readonly rig: Rig;
  readonly engines: AnalysisEngines;
  /** Where the ball lies, or lay when the rig was read; null when nobody knows. */
  readonly ballAt: PixelPoint | null;
  /** Share of the tray's light that comes from the lamp. */
  readonly lampShare: number;
  /** Directions to sources of light beside the lamp. */
  readonly secondLights: readonly Vector[];
  readonly second: SecondLamp | null;
}

/** A stone cut out, and its gloss, which may be read elsewhere meanwhile. */
interface BegunStone {
  readonly shape: StoneShape;
  readonly cutOff: boolean;
  readonly crop: StoneCrop;
  readonly view: Vector;
  readonly light: HighlightLight;
  readonly read: () => Promise<StoneGloss>;
}

/** The stones one by one, with as many after each begun as can be read beside it. */
function* begunAhead(scene: Scene, shaped: Tray['stones']): Generator<readonly [number, BegunStone]> {
  const { glossLanes } = scene.engines;
  const begun: BegunStone[] = [];
  for (const i of shaped.keys()) {
    for (const next of shaped.slice(i + begun.length, i + 1 + (glossLanes?.ahead ?? 0))) {
      begun.push(beginStone(scene, next));
    }
    yield [i, begun.shift()!];
  }
}

function beginStone(scene: Scene, { shape, cutOff }: Tray['stones'][number]): BegunStone {
  const { photo, held, rig, engines } = scene;
  const crop = stoneCrop(photo, shape.outline, rig.mmPerPx, rig.lampColor ?? [1, 1, 1]);
  const view = viewDirection(photo, shape.center[0], shape.center[1]);
  const light = highlightLight(rig, lampOver(scene, shape.center, view), crop, view);
  const begun = { shape, cutOff, crop, view, light };
  if (held.isMoved) return { ...begun, read: async () => WITHHELD };
  const elsewhere = engines.glossLanes?.read(crop, light);
  return { ...begun, read: async () => elsewhere ?? stoneGloss(crop, light) };
}

async function measureStone(scene: Scene, begun: BegunStone, id: number): Promise<StoneReport> {
  const { photo, held, rig, engines, lampShare } = scene;
  const { shape, cutOff, crop, view, light } = begun;
  const read = await begun.read();
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
    look: lookOfStone(engines.cv, photo, shape, rig),
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
