import type { LightReport } from '../../analysis/report';
import { speech, texts } from '../../texts/speech';

/** From the right, then on toward the upper edge of the picture. */
const SIDES = [
  'right',
  'upper-right',
  'top',
  'upper-left',
  'left',
  'lower-left',
  'bottom',
  'lower-right',
] as const;
/** A lamp nearer to the camera's axis than this comes from no side, degrees. */
const NO_SIDE_DEG = 3;

/** Angle between the lamp and the camera as seen from the tray, degrees. */
export function offAxisDeg({ direction: [, , z] }: LightReport): number {
  return (Math.acos(Math.max(-1, Math.min(1, z))) * 180) / Math.PI;
}

/** Where the lamp stands, as one sees it in the picture. */
export function lampSentence(light: LightReport): string {
  const { besideCamera, lampFrom, sides } = texts().setup;
  const off = offAxisDeg(light);
  if (off < NO_SIDE_DEG) return besideCamera;
  const [x, y] = light.direction;
  const eighth = Math.round((4 * Math.atan2(y, x)) / Math.PI);
  const side = SIDES[(eighth + 8) % 8] ?? SIDES[0];
  return lampFrom(sides[side], Math.round(off));
}

/** A day as one says it. */
export function daySentence(day: string | null): string {
  const { remembered, rememberedOn } = texts().setup;
  const date = day === null ? Number.NaN : Date.parse(day);
  if (Number.isNaN(date)) return remembered;
  const said = new Intl.DateTimeFormat(speech().language, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });
  return rememberedOn(said.format(date));
}
