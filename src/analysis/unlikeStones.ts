import type { ShrunkPhoto } from '../image/shrinkPhoto';
import { whiteFacing } from '../measure/bodyReflectance';
import { outlineForm } from '../measure/outlineForm';
import { shadowBeside, thicknessOf } from '../measure/shadowBeside';
import { bareTray } from './bareTray';
import { lampSide, type Tray } from './locateTray';
import { ballInSmall, takenBy } from './readScene';
import type { PixelPoint, Rig, RigScene, Unlike } from './report';

/**
 * Thickness by the shadow over width that a stone may have; it lies on its flattest side. Of 214 stones of development
 * scenes two lie below and two above, coins at 0 to 0.15, keys at 0 to 0.33, prints at 0 or, on dark paper, beyond the
 * upper. Our own limits.
 */
const THICKNESS = { from: 0.3, to: 1.3 };
/** The ball's own thickness so read, share of its diameter: else its shadow is not seen and none can be judged. */
const BALL = { from: 0.6, to: 1.35 };
/**
 * Half of its outline nearer to an ellipse, or all of it nearer to its mirror image, than this: it was made or grown so.
 * None of 33 stones of the sample trays, 60 of development scenes and 124 scanned pebbles is nearer to an ellipse than
 * 0.0078, of 26 in the development photos of other things one is (0.0057); grapes and marbles are at 0.0032 to 0.006. One
 * of the pebbles is nearer to its mirror image, and four of eight dried beans and nuts.
 */
const EVEN = { offEllipse: 0.0065, offMirror: 0.0075 };
/** Longer or more ragged than any of those stones (1.2). */
const RAGGED = 1.3;
/** A white tray reads up to 1; inter-reflections and the camera's curve add some of it. */
const WHITEST_TRAY = 1.6;
/** Share of the things whose shadow must seem off for one to count where no ball is seen. */
const LEAST_SHARE = 0.5;

/** A photo whose things are held against what stones look like under one lamp. */
export interface DoubtedPhoto {
  readonly small: ShrunkPhoto;
  readonly tray: Tray;
  readonly rig: Rig;
  /** What the photo shows beside its ball. */
  readonly scene: RigScene;
}

/**
 * What speaks against each thing on the tray being a stone that lies there in the lamp's light.
 *
 * A stone throws the lamp's shadow beside it, as long as it is thick; coins and keys throw hardly any, printed stones
 * none or elsewhere. The lamp's direction and the ball's own shadow tell what must be seen. Marbles, coins and grapes
 * have round outlines, beans and almonds such as are their own mirror image; tumbling makes neither.
 *
 * @returns One entry for each of the tray's stones, in their order; null where nothing speaks against it.
 */
export function unlikeStones(photo: DoubtedPhoto): (Unlike | null)[] {
  const { stones, reading } = photo.tray;
  const thickness = thicknesses(photo);
  const isOff = stones.map(({ shape }, i) => {
    const ratio = (thickness?.[i] ?? shape.widthPx) / shape.widthPx;
    return ratio < THICKNESS.from || ratio > THICKNESS.to;
  });
  // Without the ball outlines take shadows in, so one thing alone whose shadow seems off says nothing.
  const counts = reading !== null || isOff.filter(Boolean).length >= LEAST_SHARE * stones.length;
  return stones.map(({ shape }, i) => {
    const { offEllipse, offMirror, lengthRatio } = outlineForm(shape.outline);
    if (counts && isOff[i]) return 'shadow';
    if (lengthRatio > RAGGED) return 'ragged';
    return offEllipse < EVEN.offEllipse || offMirror < EVEN.offMirror ? 'round' : null;
  });
}

/** Thickness of each thing in photo pixels, null where its shadow's end is hidden; null when shadows tell nothing here. */
function thicknesses({ small, tray, rig, scene }: DoubtedPhoto): (number | null)[] | null {
  const share = scene.roomShare ?? rig.scene?.roomShare;
  const [x, y, z] = rig.light.direction;
  const tangent = Math.hypot(x, y) / z;
  if (share === undefined || !(tangent > 0.1)) return null;
  const { width, height, lightness } = bareTray(small.raster).difference;
  const depth = Math.log(share);
  const darkness = { width, height, channels: 1 as const, data: lightness.map((ln) => ln / depth) };
  const ball = tray.reading && ballInSmall(tray.reading.ball, small.factor);
  const taken = takenBy(tray.pieces, ball, darkness);
  const inSmall = ([row, column]: PixelPoint): PixelPoint => [
    (row + 0.5) / small.factor - 0.5,
    (column + 0.5) / small.factor - 0.5,
  ];
  const thicknessIn = (outline: readonly PixelPoint[]) => {
    const shadow = shadowBeside(darkness, outline, lampSide(rig), taken);
    return shadow && thicknessOf(shadow, tangent);
  };
  if (ball) {
    const outline = Array.from({ length: 72 }, (_, k): PixelPoint => {
      const turn = (k * Math.PI) / 36;
      return [ball.row + ball.radiusPx * Math.sin(turn), ball.column + ball.radiusPx * Math.cos(turn)];
    });
    const own = (thicknessIn(outline) ?? 0) / (2 * ball.radiusPx);
    if (own < BALL.from || own > BALL.to) return null;
  }
  return tray.stones.map(({ shape }) => {
    const thick = thicknessIn(shape.outline.map(inSmall));
    return thick === null ? null : thick * small.factor;
  });
}

/**
 * Whether the tray is brighter than a white one could be under the lamp that the ball mirrors.
 *
 * A lamp of radiance L and solid angle Ω at the angle θ from the vertical lights the tray with L Ω cos θ; of that at most
 * all comes back (Lambert's law). A printed ball mirrors no lamp: its highlight is no brighter than paper, while a glass
 * ball's is four times as bright as white under the same lamp.
 *
 * @param rig - As the photo's own ball tells it.
 * @param scene - What the same photo shows beside it.
 */
export function isBallUnlit(rig: Rig, scene: RigScene): boolean {
  const z = rig.light.direction[2];
  const white = whiteFacing(rig.lampRadiance, rig.sourceSlope, Math.sqrt((1 + z) / 2)) * z;
  const lights = scene.tray.map(([red, green, blue]) => (red + green + blue) / 3).sort((a, b) => a - b);
  const tray = lights[lights.length >> 1] ?? 0;
  return tray * (1 - (scene.roomShare ?? 0)) > WHITEST_TRAY * white;
}
