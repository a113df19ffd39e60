/** Every reason for which the page shows no live picture, with the sentence that says what to do. */
export const CAMERA_TROUBLES = {
  denied:
    'This page may not use the camera: allow it in the browser’s settings for this page, then try again.',
  'no-camera': 'No camera was found on this device.',
  'in-use': 'The camera is in use by another program: close that program, then try again.',
  'not-offered': 'This browser gives pages no camera.',
  lost: 'The camera stopped: it was unplugged or taken by another program.',
  broken: 'The camera could not be started.',
} as const;

export type CameraTrouble = keyof typeof CAMERA_TROUBLES;

/** What each name of an error of `getUserMedia` means. */
const BY_NAME: Readonly<Record<string, CameraTrouble>> = {
  NotAllowedError: 'denied',
  SecurityError: 'denied',
  NotFoundError: 'no-camera',
  OverconstrainedError: 'no-camera',
  NotReadableError: 'in-use',
  NotSupportedError: 'not-offered',
  AbortError: 'in-use',
};

/**
 * What an error of opening the camera means to a person.
 *
 * @param error - Whatever `getUserMedia` rejected with.
 * @see W3C Media Capture and Streams, section 10.2, getUserMedia (names of the errors)
 */
export function cameraTrouble(error: unknown): CameraTrouble {
  const name = error instanceof Error ? error.name : '';
  return BY_NAME[name] ?? 'broken';
}
