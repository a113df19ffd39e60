import type { Circle } from './circleFit';
import type { TrayDifference } from './trayDifference';

/** What full shadow does to the tray. */
export interface Shadow {
  /** ln of the share of the tray's light that is left, below 0. */
  readonly depth: number;
  /** Shift of ln(R/G) and ln(B/G) there: ambient light has its own color. */
  readonly redGreen: number;
  readonly blueGreen: number;
  /** Only stones are darker than this, ln of the share of the tray's light. */
  readonly darkest: number;
  /** True when read beside the ball; shadows that were guessed do not speak against a stone. */
  readonly isRead: boolean;
}

/** Taken when no ball shows how dark shadows are: one eighth of the tray's light, of the tray's color. */
export const USUAL_SHADOW: Shadow = {
  depth: Math.log(1 / 8),
  redGreen: 0,
  blueGreen: 0,
  darkest: -3,
  isRead: false,
};
/** Below the shadow's depth beside the ball no shadow reaches, ln units. */
const BELOW_SHADOW = 0.7;
const RING = { from: 1.1, to: 1.7 };
const SECTORS = 24;
const LEAST_DEPTH = -0.1;
/** The ball's shadow lies within this of the direction away from the lamp. */
const MOST_ASIDE_DEG = 50;
/** Ambient light tints a shadow at most so much, ln units; what differs more is a stone. */
const MOST_TINT = 0.35;

/**
 * How dark and of what color full shadow is on this tray, read beside the reference ball.
 *
 * @param difference - Departures from the tray, ln units.
 * @param ball - The ball in the same picture.
 * @param lampSide - Unit vector toward the lamp, x right and y up; null when nothing tells.
 * @returns The darkest sector around the ball, on the side away from the lamp, that is not a stone's; the usual shadow
 *   when none is dark.
 */
export function ballShadow(
  difference: TrayDifference,
  ball: Circle,
  lampSide: readonly [x: number, y: number] | null,
): Shadow {
  let shadow: Shadow = { ...USUAL_SHADOW, depth: LEAST_DEPTH };
  for (let sector = 0; sector < SECTORS; sector++) {
    if (lampSide && !fallsAway(sector, lampSide)) continue;
    const along = sectorPixels(difference, ball, sector);
    along.sort((a, b) => difference.lightness[a]! - difference.lightness[b]!);
    const middle = along[Math.floor(0.2 * along.length)];
    if (middle === undefined || difference.lightness[middle]! >= shadow.depth) continue;
    const dark = along.slice(0, Math.ceil(0.4 * along.length));
    const mean = (field: Float32Array) => dark.reduce((sum, i) => sum + field[i]!, 0) / dark.length;
    const tint = [mean(difference.redGreen), mean(difference.blueGreen)] as const;
    if (Math.hypot(...tint) > MOST_TINT) continue;
    const depth = Math.max(difference.lightness[middle]!, -3);
    shadow = {
      depth,
      darkest: depth - BELOW_SHADOW,
      isRead: true,
      redGreen: tint[0],
      blueGreen: tint[1],
    };
  }
  return shadow.depth < LEAST_DEPTH ? shadow : USUAL_SHADOW;
}

/** Rows run down, y runs up. */
function fallsAway(sector: number, [x, y]: readonly [number, number]): boolean {
  const angle = (2 * Math.PI * (sector + 1 / 3)) / SECTORS;
  return -x * Math.cos(angle) + y * Math.sin(angle) > Math.cos((MOST_ASIDE_DEG * Math.PI) / 180);
}

function sectorPixels(difference: TrayDifference, ball: Circle, sector: number): number[] {
  const along: number[] = [];
  for (let k = 0; k < 3; k++) {
    const angle = (2 * Math.PI * (sector + k / 3)) / SECTORS;
    for (let share = RING.from; share < RING.to; share += 0.06) {
      const row = Math.round(ball.row + share * ball.radiusPx * Math.sin(angle));
      const column = Math.round(ball.column + share * ball.radiusPx * Math.cos(angle));
      if (row < 0 || column < 0 || row >= difference.height || column >= difference.width) continue;
      along.push(row * difference.width + column);
    }
  }
  return along;
}
