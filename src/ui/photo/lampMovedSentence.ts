import type { PhotoReport } from '../../analysis/report';
import { texts } from '../../texts/speech';

/** Turns smaller than this are the tray's being put back, degrees. */
const TURNED_DEG = 5;

/**
 * Says what a second photo with the lamp elsewhere is good for, or was.
 *
 * @param isGiven - Whether there is one.
 * @param found - What it showed; undefined when it could not be used, which a warning explains.
 */
export function lampMovedSentence(isGiven: boolean, found: PhotoReport['lampMoved']): string {
  const { offer, unused, used } = texts().tray.lampMoved;
  if (!isGiven) return offer;
  if (!found) return unused;
  const turnedDeg = Math.abs(found.turnDeg);
  return used(turnedDeg >= TURNED_DEG ? Math.round(turnedDeg) : null);
}
