import type { FlawReport } from '../../analysis/report';

const NAMES: Readonly<Record<FlawReport['kind'], string>> = {
  pit: 'Pit',
  fracture: 'Fracture',
  chip: 'Chip',
  scratch: 'Scratch',
};

/**
 * A flaw in words: kind, size, and what a second photo told of it.
 *
 * @returns Such as "Pit, 0.9 mm across" or "Fracture, 6.2 mm long".
 */
export function flawWords(flaw: FlawReport): string {
  const across = flaw.diameterMm === undefined ? '' : `, ${flaw.diameterMm.toFixed(1)} mm across`;
  const long = flaw.lengthMm === undefined ? '' : `, ${flaw.lengthMm.toFixed(1)} mm long`;
  const wide = flaw.widthMm === undefined ? '' : `, about ${flaw.widthMm.toFixed(2)} mm wide`;
  return `${NAMES[flaw.kind]}${across}${long}${wide}${reliefWords(flaw)}`;
}

function reliefWords({ followsLamp }: FlawReport): string {
  if (followsLamp === undefined) return '';
  return followsLamp ? ', shaded by the lamp' : ', not shaded by the lamp: likely pattern';
}
