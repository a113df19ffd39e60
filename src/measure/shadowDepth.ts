import type { Circle } from './circleFit';
import type { TrayDifference } from './trayModel';

/** Taken when no ball shows how dark shadows are: one eighth of the tray's light. */
export const USUAL_SHADOW_DEPTH = Math.log(1 / 8);
const RING = { from: 1.08, to: 1.7 };
const SECTORS = 24;

/**
 * How dark full shadow is on this tray, read beside the reference ball.
 *
 * @param difference - Departures from the tray, ln units.
 * @param ball - The ball in the same picture.
 * @returns ln of the share of the tray's light left in the ball's shadow, at most −0.1.
 */
export function shadowDepth(difference: TrayDifference, ball: Circle): number {
  let deepest = -0.1;
  for (let sector = 0; sector < SECTORS; sector++) {
    const along: number[] = [];
    for (let k = 0; k < 3; k++) {
      const angle = (2 * Math.PI * (sector + k / 3)) / SECTORS;
      for (let share = RING.from; share < RING.to; share += 0.06) {
        const row = Math.round(ball.row + share * ball.radiusPx * Math.sin(angle));
        const column = Math.round(ball.column + share * ball.radiusPx * Math.cos(angle));
        if (row < 0 || column < 0 || row >= difference.height || column >= difference.width) continue;
        along.push(difference.lightness[row * difference.width + column]!);
      }
    }
    along.sort((a, b) => a - b);
    const dark = along[Math.floor(0.2 * along.length)];
    if (dark !== undefined && dark < deepest) deepest = dark;
  }
  return Math.max(deepest, -3);
}
