import { type FrameChecks, isTooBright } from './frameChecks';
import type { FramedStone, Preview } from './preview';

/** What to do next while framing, each with its sentence. */
export const ADVICE = {
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
} as const;

export type AdviceCode = keyof typeof ADVICE;

/**
 * The one thing to do next, most needed first: nothing else can be judged in a dark or blurred picture.
 *
 * @param preview - What the frame shows.
 * @param checks - How it is judged.
 * @param stones - Stones outlined in it or, the camera at rest, shortly before; null while they are not.
 */
export function frameAdvice(
  preview: Preview,
  checks: FrameChecks,
  stones: readonly FramedStone[] | null,
): AdviceCode {
  if (preview.tooDark || preview.refusal === 'too-dark') return 'too-dark';
  if (preview.refusal === 'out-of-focus') return 'out-of-focus';
  if (checks.ball === 'bad') return 'no-ball';
  if (checks.scale === 'bad') return 'too-far';
  if (isTooBright(preview)) return preview.lampClipped === null ? 'picture-too-bright' : 'too-bright';
  if (checks.focus === 'bad') return 'out-of-focus';
  if (preview.secondLight) return 'second-light';
  if (preview.lampPartly) return 'lamp-partly';
  if (stones === null) return 'outlining';
  if (stones.length === 0) return 'no-stone';
  return stones.some(({ cutOff }) => cutOff) ? 'stone-cut-off' : 'ready';
}
