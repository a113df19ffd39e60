import type { FlawReport } from '../../analysis/report';

const NAMES: Readonly<Record<FlawReport['kind'], string>> = {
  pit: 'Pit',
  fracture: 'Fracture',
  chip: 'Chip',
  scratch: 'Scratch',
};

/**
 * A flaw in words: kind, size, and a word on how sure the photo is.
 *
 * @returns Such as "Pit, 0.9 mm across" or "Fracture, 6.2 mm long, uncertain".
 */
export function flawWords(flaw: FlawReport): string {
  const across = flaw.diameterMm === undefined ? '' : `, ${flaw.diameterMm.toFixed(1)} mm across`;
  const long = flaw.lengthMm === undefined ? '' : `, ${flaw.lengthMm.toFixed(1)} mm long`;
  return `${NAMES[flaw.kind]}${across}${long}${flaw.confidence < 0.5 ? ', uncertain' : ''}`;
}
