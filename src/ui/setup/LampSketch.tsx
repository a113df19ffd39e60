import type { LightReport } from '../../analysis/report';
import { lampSentence, offAxisDeg } from './rigWords';

/** Middle of the drawing; one unit is one degree off the camera's axis. */
const [MIDDLE_X, MIDDLE_Y] = [80, 62];
/** Lamps farther out are drawn at the edge, degrees. */
const FARTHEST_DEG = 52;

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

function spotOf(light: LightReport): Spot {
  const [right, up] = light.direction;
  const across = Math.hypot(right, up) || 1;
  const off = Math.min(FARTHEST_DEG, offAxisDeg(light));
  return {
    x: MIDDLE_X + (off * right) / across,
    y: MIDDLE_Y - (off * up) / across,
    radius: Math.max(2, light.angularDiameterDeg / 2),
  };
}

interface Props {
  /** The lamp of the photo shown; null when it shows no ball. */
  readonly now: LightReport | null;
  /** The remembered lamp; null when there is none. */
  readonly remembered: LightReport | null;
}

/** The ball seen from the camera, its shadow, and the lamp where it stands around it, as large as it looks. */
export function LampSketch({ now, remembered }: Props) {
  const light = now ?? remembered;
  if (light === null) return null;
  const lamp = spotOf(light);
  const kept = remembered && spotOf(remembered);
  const [dx, dy] = [(lamp.x - MIDDLE_X) / 10, (lamp.y - MIDDLE_Y) / 10];
  return (
    <svg className="lamp-sketch" viewBox="0 0 160 124" role="img" aria-label={lampSentence(light)}>
      <path
        className="sketch-tray"
        d="M9 15C8 7 15 4 22 4L140 6C149 6 153 10 153 18L151 108C151 116 147 120 138 120L21 118C12 118 8 113 8 105Z"
      />
      <circle className="sketch-shadow" cx={MIDDLE_X - 1.6 * dx} cy={MIDDLE_Y - 1.6 * dy} r="9" />
      <path className="sketch-ray" d={`M${lamp.x} ${lamp.y}L${MIDDLE_X + dx} ${MIDDLE_Y + dy}`} />
      <circle className="sketch-ball" cx={MIDDLE_X} cy={MIDDLE_Y} r="9" />
      <circle className="sketch-glint" cx={MIDDLE_X + dx} cy={MIDDLE_Y + dy} r="1.7" />
      {kept !== null && <circle className="sketch-kept" cx={kept.x} cy={kept.y} r={kept.radius + 2.5} />}
      {now !== null && <circle className="sketch-lamp" cx={lamp.x} cy={lamp.y} r={lamp.radius} />}
    </svg>
  );
}
