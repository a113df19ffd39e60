import { expect, it } from 'vitest';
import { type CameraSettings, heldSentence, holdWishes, nextCompensation } from '../../src/camera/cameraHold';
import { freeCamera, holdCamera } from '../../src/ui/camera/holdCamera';

const BOTH = ['continuous', 'manual'];
const PHONE = { exposureMode: BOTH, focusMode: ['single-shot', 'continuous'], whiteBalanceMode: BOTH };
const NOW = { exposureMode: 'continuous', exposureTime: 120, iso: 100, colorTemperature: 4500 };

/** A camera that keeps what it is told, unless the name of the setting is among those it refuses. */
function drawnCamera(refused: readonly string[] = []) {
  let settings: CameraSettings = NOW;
  const asked: object[] = [];
  return {
    asked,
    settings: () => settings,
    track: {
      applyConstraints: async (wish?: MediaTrackConstraints) => {
        for (const set of wish?.advanced ?? []) {
          asked.push(set);
          if (Object.keys(set).some((name) => refused.includes(name)))
            throw new Error('OverconstrainedError');
          settings = { ...settings, ...(set as CameraSettings) };
        }
      },
      getSettings: () => settings as MediaTrackSettings,
    },
  };
}

it('holds exposure and white balance at their present values, and focuses once where focus cannot be set', () => {
  expect(holdWishes(PHONE, NOW).map(({ hold }) => hold)).toEqual([
    { exposureMode: 'manual', exposureTime: 120, iso: 100 },
    { focusMode: 'single-shot' },
    { whiteBalanceMode: 'manual', colorTemperature: 4500 },
  ]);
});

it('wishes for nothing from a camera that offers nothing, or could not be let go again', () => {
  expect(holdWishes({}, NOW)).toEqual([]);
  expect(holdWishes({ exposureMode: ['manual'] }, NOW)).toEqual([]);
});

it('holds the others when the camera refuses one', async () => {
  const camera = drawnCamera(['focusMode']);
  expect(await holdCamera(camera.track, PHONE)).toEqual(['exposure', 'white balance']);
  expect(camera.settings()).toMatchObject({ exposureMode: 'manual', whiteBalanceMode: 'manual' });
});

it('lets everything go in one call', async () => {
  const camera = drawnCamera();
  await holdCamera(camera.track, PHONE);
  await freeCamera(camera.track, PHONE);
  expect(camera.settings()).toMatchObject({
    exposureMode: 'continuous',
    focusMode: 'continuous',
    whiteBalanceMode: 'continuous',
  });
  const untouched = drawnCamera();
  await freeCamera(untouched.track, {});
  expect(untouched.asked).toEqual([]);
});

it('says what is locked and what cannot be', () => {
  expect(heldSentence(['exposure', 'white balance'], ['exposure', 'white balance'])).toBe(
    'Locked: exposure and white balance. This camera cannot lock focus.',
  );
  expect(heldSentence([], ['exposure', 'focus', 'white balance'])).toBe('Not locked yet.');
  expect(heldSentence([], [])).toBe('This camera cannot lock exposure, focus and white balance.');
});

it('makes the picture darker by half a stop, within what the camera offers', () => {
  const camera = { exposureCompensation: { min: -2, max: 2, step: 0.1 } };
  expect(nextCompensation(camera, 0, -1)).toBeCloseTo(-0.5, 12);
  expect(nextCompensation(camera, -1.8, -1)).toBe(-2);
  expect(nextCompensation(camera, 2, 1)).toBeNull();
  expect(nextCompensation({}, 0, 1)).toBeNull();
  expect(nextCompensation({ exposureCompensation: { min: -3, max: 3, step: 1 } }, 0, 1)).toBe(1);
});
