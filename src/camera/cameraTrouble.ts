/** Every reason for which the page shows no live picture; what to do then is said in the texts. */
export type CameraTrouble = 'denied' | 'no-camera' | 'in-use' | 'not-offered' | 'lost' | 'broken';

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
