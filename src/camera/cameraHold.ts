import { texts } from '../texts/speech';

/** What a camera can hold so that all photos of a tray are alike. */
export type Holdable = 'exposure' | 'focus' | 'white balance';

/** What a camera offers, as `getCapabilities` tells it; only what is used here. */
export interface CameraAbilities {
  readonly exposureMode?: readonly string[];
  readonly focusMode?: readonly string[];
  readonly whiteBalanceMode?: readonly string[];
  readonly exposureCompensation?: { readonly min: number; readonly max: number; readonly step?: number };
  readonly torch?: boolean | readonly boolean[];
}

/** How a camera is set, as `getSettings` tells it, or how it shall be set. */
export type CameraSettings = Readonly<Record<string, string | number | boolean | undefined>>;

/** How one thing is held and let go. */
export interface HoldWish {
  readonly what: Holdable;
  /** Settings that hold it at its present values. */
  readonly hold: CameraSettings;
  /** Settings that let it adjust itself again. */
  readonly free: CameraSettings;
  readonly mode: string;
}

/** The mode of each thing, and the values that go with it. */
const MODES = [
  { what: 'exposure', mode: 'exposureMode', values: ['exposureTime', 'iso'] },
  { what: 'focus', mode: 'focusMode', values: ['focusDistance'] },
  { what: 'white balance', mode: 'whiteBalanceMode', values: ['colorTemperature'] },
] as const;

/**
 * What can be held on a camera, and with which settings.
 *
 * @param abilities - What it offers.
 * @param now - How it is set.
 * @returns One wish for each of exposure, focus and white balance that can be held; focus may be held by focusing once.
 * @see W3C MediaStream Image Capture, section 8.1 (MediaTrackCapabilities: `manual`, `single-shot`, `continuous`)
 */
export function holdWishes(abilities: CameraAbilities, now: CameraSettings): HoldWish[] {
  return MODES.flatMap(({ what, mode, values }) => {
    const offered = abilities[mode] ?? [];
    const held = ['manual', 'single-shot'].find((name) => offered.includes(name));
    if (held === undefined || !offered.includes('continuous')) return [];
    const present = held === 'manual' ? values.filter((name) => typeof now[name] === 'number') : [];
    const hold = { [mode]: held, ...Object.fromEntries(present.map((name) => [name, now[name]])) };
    return [{ what, mode, hold, free: { [mode]: 'continuous' } }];
  });
}

/** Says what is held, and what this camera does not let be held. */
export function heldSentence(held: readonly Holdable[], wished: readonly Holdable[]): string {
  const all = MODES.map(({ what }) => what);
  const never = all.filter((what) => !wished.includes(what));
  const { locked, notLocked, cannotLock } = texts().camera;
  const cannot = never.length > 0 ? [cannotLock(never)] : [];
  if (never.length === all.length) return cannotLock(never);
  return [held.length === 0 ? notLocked : locked(held), ...cannot].join(' ');
}

/** Stops by which one tap makes the picture darker or lighter. */
const STOPS = 0.5;

/**
 * The next exposure compensation in a direction.
 *
 * @param abilities - What the camera offers.
 * @param now - Its present compensation, stops.
 * @param direction - −1 darker, 1 lighter.
 * @returns Stops; null when the camera offers no further step.
 */
export function nextCompensation(
  { exposureCompensation: range }: CameraAbilities,
  now: number,
  direction: -1 | 1,
): number | null {
  if (!range || range.max <= range.min) return null;
  const step = Math.max(range.step ?? 0, STOPS);
  const next = Math.min(range.max, Math.max(range.min, now + direction * step));
  return Math.abs(next - now) < 1e-6 ? null : next;
}
