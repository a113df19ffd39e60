import type { Holdable } from '../../camera/cameraHold';
import type { CameraTrouble } from '../../camera/cameraTrouble';
import type { AdviceCode } from '../../camera/frameAdvice';
import type { CheckState, FrameChecks } from '../../camera/frameChecks';
import { listed } from '../listed';

/** The page's own camera, and the drawing of where it stands. */
export const camera = {
  title: 'Camera',
  close: 'Close',
  live: 'Live picture of the tray',
  stones: (count: number) => (count === 1 ? '1 stone' : `${count} stones`),

  /** Every reason for which the page shows no live picture, with what to do. */
  troubles: {
    denied:
      'This page may not use the camera: allow it in the browser’s settings for this page, then try again.',
    'no-camera': 'No camera was found on this device.',
    'in-use': 'The camera is in use by another program: close that program, then try again.',
    'not-offered': 'This browser gives pages no camera.',
    lost: 'The camera stopped: it was unplugged or taken by another program.',
    broken: 'The camera could not be started.',
  } satisfies Record<CameraTrouble, string>,

  /** What to do next while framing; one short sentence each. */
  advice: {
    looking: 'Looking for the ball and the stones …',
    unchecked: 'The picture cannot be checked now: take the photo all the same.',
    'too-dark': 'Too dark: bring the lamp nearer.',
    'out-of-focus': 'Hold still: blurred.',
    'no-ball': 'The ball is not seen: lay it among the stones, whole in the picture.',
    'too-bright': 'Too bright: the lamp’s image in the ball is washed out.',
    'picture-too-bright': 'Too bright: parts of the picture are washed out.',
    'too-far': 'Go closer: the dashed ring must lie on the ball, and be larger.',
    'second-light': 'The ball mirrors a second light: switch it off, or cover the window.',
    'lamp-partly': 'Something hides part of the lamp from the ball: move it away.',
    outlining: 'Hold still: the stones are being outlined.',
    'no-stone': 'No stone is seen: lay the stones apart on the plain tray.',
    'stone-cut-off': 'A stone is cut off: move it in, or go a little farther away.',
    ready: 'Good: take the photo.',
  } satisfies Record<AdviceCode, string>,
  pressDarker: 'Press “Darker”.',
  setDarker: 'Use the device’s own camera and set it darker.',
  starting: 'Starting the camera …',
  holdStill: 'Hold still: the sharpest of several photos is kept.',
  failed: 'The photo could not be taken: try again.',

  checks: 'Checks of the picture',
  checkNames: { ball: 'Ball', exposure: 'Light', focus: 'Focus', scale: 'Size' } satisfies Record<
    keyof FrameChecks,
    string
  >,
  /** Read out with the name; the sign says the same to the eye. */
  checkStates: { good: 'good', bad: 'to better', unknown: 'not known yet' } satisfies Record<
    CheckState,
    string
  >,

  lock: 'Lock',
  unlock: 'Unlock',
  darker: 'Darker',
  lighter: 'Lighter',
  notLocked: 'Not locked yet.',
  locked: (what: readonly Holdable[]) => `Locked: ${listed(what, 'and')}.`,
  cannotLock: (what: readonly Holdable[]) => `This camera cannot lock ${listed(what, 'and')}.`,

  take: 'Take the photo',
  taking: (number: number, of: number) => `Photo ${number} of ${of} …`,
  again: 'Try again',
  ownCamera: 'Use the device’s own camera',

  /** Camera, lamp and ball from the side. */
  rigDrawing: {
    alt: 'From the side: the camera straight above the tray, the lamp 25 to 45 degrees to its side, the dark ball among the stones.',
    camera: 'camera',
    lamp: 'lamp',
    stones: 'ball among dry stones',
  },
} as const;
