import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';

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
  const { asRemembered, notAsRemembered } = texts().rig;
  const judgment = (alarms.length === 0 ? asRemembered : notAsRemembered)(check.byBall);
  return [judgment, ...lampNotes(check), ...cameraNotes(check)];
}

function lampNotes({ changes, lampOffDeg, lampSizeRatio, shadowTurnDeg }: ComparedRig): string[] {
  if (!changes.includes('lamp-moved')) return [];
  const words = texts().rig;
  const notes: string[] = [];
  if (lampOffDeg !== null) notes.push(words.lampOff(plainNumber(lampOffDeg)));
  if (lampSizeRatio !== null && Math.abs(lampSizeRatio - 1) > SAME_SIZE)
    notes.push(words.lampLooks(percent(lampSizeRatio)));
  if (shadowTurnDeg !== null && shadowTurnDeg > SAME_TURN_DEG)
    notes.push(words.shadowsTurned(plainNumber(shadowTurnDeg)));
  return notes;
}

function cameraNotes({ byBall, changes, scaleRatio, exposureRatio }: ComparedRig): string[] {
  const words = texts().rig;
  const notes: string[] = [];
  if (changes.includes('camera-moved') && scaleRatio !== null)
    notes.push(words.scaleChanged(percent(scaleRatio)));
  if (changes.includes('exposure-changed') && exposureRatio !== null)
    notes.push(words.exposureChanged(percent(exposureRatio), byBall));
  return notes;
}

const percent = (ratio: number) => `${Math.round(100 * ratio)} %`;
