import { plainNumber } from './plainNumber';

/** A photo's lamp and camera against the remembered ones, as far as sentences need it; a report's check fits it. */
export interface ComparedRig {
  readonly byBall: boolean;
  readonly changes: readonly string[];
  readonly lampOffDeg: number | null;
  readonly lampSizeRatio: number | null;
  readonly shadowTurnDeg: number | null;
  readonly scaleRatio: number | null;
  readonly exposureRatio: number | null;
}

/** Sizes nearer than this are not worth a word, share. */
const SAME_SIZE = 0.03;

/** Turns below this are within what other stones bring about, degrees. */
const SAME_TURN_DEG = 6;

/**
 * Says in sentences how a photo's lamp and camera compare with the remembered ones.
 *
 * @param check - The comparison.
 * @returns One sentence or more, the judgment first.
 */
export function rigNotes(check: ComparedRig): string[] {
  const alarms = check.changes.filter((code) => !(check.byBall && code === 'exposure-changed'));
  const how = check.byBall ? 'by its ball' : 'by tray, shadows and edges';
  const judgment =
    alarms.length === 0
      ? `Lamp and camera stand as remembered (${how}).`
      : `Lamp and camera are not as remembered (${how}).`;
  return [judgment, ...lampNotes(check), ...cameraNotes(check)];
}

function lampNotes({ changes, lampOffDeg, lampSizeRatio, shadowTurnDeg }: ComparedRig): string[] {
  if (!changes.includes('lamp-moved')) return [];
  const notes: string[] = [];
  if (lampOffDeg !== null) notes.push(`The lamp's direction is ${plainNumber(lampOffDeg)}° off.`);
  if (lampSizeRatio !== null && Math.abs(lampSizeRatio - 1) > SAME_SIZE)
    notes.push(`It looks ${percent(lampSizeRatio)} as wide as it did.`);
  if (shadowTurnDeg !== null && shadowTurnDeg > SAME_TURN_DEG)
    notes.push(`Shadows fall ${plainNumber(shadowTurnDeg)}° from where they fell.`);
  return notes;
}

function cameraNotes({ byBall, changes, scaleRatio, exposureRatio }: ComparedRig): string[] {
  const notes: string[] = [];
  if (changes.includes('camera-moved') && scaleRatio !== null)
    notes.push(`A pixel covers ${percent(scaleRatio)} of what it covered.`);
  if (changes.includes('exposure-changed') && exposureRatio !== null) {
    const made = byBall ? 'the ball makes up for it' : "corrected by the tray's light";
    notes.push(`The exposure is ${percent(exposureRatio)} of the remembered one: ${made}.`);
  }
  return notes;
}

const percent = (ratio: number) => `${Math.round(100 * ratio)} %`;
