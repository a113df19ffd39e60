import { speech, texts } from '../texts/speech';

/** Every reason for which a photo is refused. */
export const REFUSALS = [
  'empty-file',
  'not-an-image',
  'truncated',
  'too-small',
  'too-large',
  'no-stone',
  'no-ball',
  'out-of-focus',
  'too-dark',
  'low-resolution',
  'exposures-differ-in-size',
  'exposures-differ-in-scene',
] as const;

export type RefusalCode = (typeof REFUSALS)[number];

/** Every warning about a photo that was graded all the same. */
export const WARNINGS = [
  'ball-clipped',
  'low-resolution',
  'stone-cut-off',
  'lamp-too-large',
  'blurred',
  'compressed',
  'too-dark',
  'clipped',
  'second-light',
  'lamp-partly',
  'wet-stones',
  'ball-unlit',
  'unlike-stones',
  'lamp-moved',
  'camera-moved',
  'focus-lost',
  'exposure-changed',
  'tray-changed',
  'moved-other-tray',
  'moved-same-lamp',
  'moved-no-ball',
  'rig-unchecked',
] as const;

export type WarningCode = (typeof WARNINGS)[number];

/** A place in the upright full-size photo that a warning is about. */
export interface PlaceMark {
  readonly row: number;
  readonly column: number;
  readonly radiusPx: number;
}

/** What in the photo a warning is about; left out where it is about the whole. */
export interface WarningPlace {
  readonly marks?: readonly PlaceMark[];
  /** Numbers of the stones. */
  readonly stones?: readonly number[];
}

export interface Warning extends WarningPlace {
  readonly code: WarningCode;
  /** Its sentence as it was spoken where the photo was measured; a page says it anew by its code. */
  readonly message: string;
}

/** What a refusal says, in the language and unit spoken now. */
export function refusalSentence(code: RefusalCode): string {
  const { refusals, refusalsInInches } = texts().notices;
  const inInches: Partial<Record<RefusalCode, string>> = refusalsInInches;
  return (speech().length === 'inch' ? inInches[code] : undefined) ?? refusals[code];
}

/** What a warning says, in the language and unit spoken now. */
export function warningSentence(code: WarningCode): string {
  const { warnings, warningsInInches } = texts().notices;
  const inInches: Partial<Record<WarningCode, string>> = warningsInInches;
  return (speech().length === 'inch' ? inInches[code] : undefined) ?? warnings[code];
}

/** A photo that cannot be graded; `message` is its sentence in the language spoken when it was refused. */
export class Refusal extends Error {
  readonly code: RefusalCode;
  constructor(code: RefusalCode) {
    super(refusalSentence(code));
    this.name = 'Refusal';
    this.code = code;
  }
}

/** Builds the warning of a code. */
export function warning(code: WarningCode): Warning {
  return { code, message: warningSentence(code) };
}

/** Builds the warning of a code with the places and stones it is about. */
export function warningAt(code: WarningCode, place: WarningPlace): Warning {
  return { ...warning(code), ...place };
}
