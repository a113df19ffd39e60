import type { GlossPhotoRow } from './glossRow';
import { percent, verdict } from './glossTargets';
import type { Verdict } from './realVerdict';

const TARGET = { found: 0.95, falseAlarms: 0.03 };

/** For each fault that a truth file names, the refusals and warnings any of which finds it. */
export const FOUND_BY: Readonly<Record<string, readonly string[]>> = {
  'out-of-focus': ['out-of-focus', 'blurred'],
  clipped: ['clipped', 'ball-clipped'],
  'too-dark': ['too-dark'],
  'second-light': ['second-light'],
  wet: ['wet-stones'],
  'cut-off': ['stone-cut-off'],
  'too-few-px': ['low-resolution', 'too-small'],
  'lamp-cut': ['lamp-partly'],
  'ball-shaded': ['lamp-partly', 'ball-shaded'],
  'lamp-too-large': ['lamp-too-large'],
};
const ALL_CODES = new Set(Object.values(FOUND_BY).flat());

type CheckedPhoto = Pick<GlossPhotoRow, 'faults' | 'refused' | 'warnings'>;

/** Codes about faults that a photo was given; a refusal of any kind is one. */
export function alarmsOf({ refused, warnings }: CheckedPhoto): string[] {
  return refused === null ? warnings.filter((code) => ALL_CODES.has(code)) : [refused];
}

/**
 * Every target of the photo checks and what came of it.
 *
 * @param photos - Photos with faults, and good ones.
 * @throws Error if a truth file names a fault that the table does not know.
 */
export function faultVerdicts(photos: readonly CheckedPhoto[]): Verdict[] {
  const named = [...new Set(photos.flatMap(({ faults }) => faults))].sort();
  const unknown = named.filter((fault) => !(fault in FOUND_BY));
  if (unknown.length > 0) throw new Error(`The table of faults lacks: ${unknown.join(', ')}.`);
  const found = named.map((fault) => {
    const faulty = photos.filter(({ faults }) => faults.includes(fault));
    const seen = faulty.filter((photo) => alarmsOf(photo).some((code) => FOUND_BY[fault]!.includes(code)));
    const share = seen.length / faulty.length;
    const measured = `${seen.length} of ${faulty.length}, ${percent(share)}`;
    return verdict(`${fault}: found`, measured, `≥ ${percent(TARGET.found)}`, share >= TARGET.found);
  });
  const good = photos.filter(({ faults }) => faults.length === 0);
  const alarmed = good.filter((photo) => alarmsOf(photo).length > 0);
  const share = alarmed.length / good.length;
  const codes = [...new Set(alarmed.flatMap(alarmsOf))].join(', ');
  const measured = `${alarmed.length} of ${good.length}, ${percent(share)}${codes && `: ${codes}`}`;
  return [
    ...found,
    verdict(
      'false alarms on good photos',
      measured,
      `≤ ${percent(TARGET.falseAlarms)}`,
      share <= TARGET.falseAlarms,
    ),
  ];
}

/** Photos whose fault was missed, and good ones with an alarm, one a line. */
export function misjudgedPhotos(photos: readonly GlossPhotoRow[]): string[] {
  return photos.flatMap((photo) => {
    const alarms = alarmsOf(photo);
    const missed = photo.faults.filter((fault) => !alarms.some((code) => FOUND_BY[fault]?.includes(code)));
    const said = alarms.join(', ') || 'nothing';
    if (missed.length > 0)
      return [`  ${photo.scene} ${photo.variant} missed ${missed.join(', ')}; said ${said}`];
    return photo.faults.length === 0 && alarms.length > 0
      ? [`  ${photo.scene} ${photo.variant} is good; said ${said}`]
      : [];
  });
}
