import type { PhotoReport } from '../../analysis/report';

/** Turns smaller than this are the tray's being put back, degrees. */
const TURNED_DEG = 5;

/**
 * Says what a second photo with the lamp elsewhere is good for, or was.
 *
 * @param isGiven - Whether there is one.
 * @param found - What it showed; undefined when it could not be used, which a warning explains.
 */
export function lampMovedSentence(isGiven: boolean, found: PhotoReport['lampMoved']): string {
  if (!isGiven)
    return 'Pit or pattern? Carry the lamp a third of the way around the tray and photograph it again.';
  if (!found) return 'The second photo was not used.';
  const turned =
    Math.abs(found.turnDeg) >= TURNED_DEG
      ? `, the tray turned by ${Math.round(Math.abs(found.turnDeg))}°`
      : '';
  return `Pits checked against a second photo, the light from elsewhere${turned}: what it shades differently is relief.`;
}
