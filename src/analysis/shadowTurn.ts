import type { Rig, RigScene } from './report';

/** Turn that other stones alone do not cause, degrees, and how like shadows both must look. */
const MOST_DEG = 10;
const LEAST_LIKENESS = 0.35;
/** Lamps are at least this far from the tray, mm. Common practice: a desk lamp stands 0.4 to 1 m away. */
const NEAREST_LAMP_MM = 400;
/** A lamp nearer to the camera's axis than this throws no shadow that can be seen, sine. */
const LEAST_SLANT = 0.1;

/**
 * Turn of the shadows' direction since the rig was remembered.
 *
 * A lamp at distance D and angle θ off the axis stands D·sin θ beside the tray; from stones whose middle lies s away
 * from where it lay, that place is seen turned by up to s / (D·sin θ), which is allowed for.
 *
 * @param own - This photo's scene.
 * @param kept - The remembered rig.
 * @returns The turn, 0 to 180°, and whether only a moved lamp explains it; null when shadows are not clear in both.
 */
export function shadowTurn(
  { shadow: now }: RigScene,
  { scene, light, mmPerPx }: Rig,
): { readonly turnDeg: number; readonly isTurned: boolean } | null {
  const before = scene?.shadow;
  if (!now || !before || Math.min(now.likeness, before.likeness) < LEAST_LIKENESS) return null;
  const slant = Math.hypot(light.direction[0], light.direction[1]);
  if (slant < LEAST_SLANT) return null;
  const turn = Math.abs(now.turnDeg - before.turnDeg) % 360;
  const turnDeg = Math.min(turn, 360 - turn);
  const shiftMm = Math.hypot(now.at[0] - before.at[0], now.at[1] - before.at[1]) * mmPerPx;
  const allowedDeg = (shiftMm / (NEAREST_LAMP_MM * slant)) * (180 / Math.PI);
  return { turnDeg, isTurned: turnDeg > MOST_DEG + allowedDeg };
}
