import { type FrameChecks, isTooBright } from './frameChecks';
import type { FramedStone, Preview } from './preview';

/** What to do next while framing; each is said in the texts. */
export type AdviceCode =
  | 'looking'
  | 'unchecked'
  | 'too-dark'
  | 'out-of-focus'
  | 'no-ball'
  | 'too-bright'
  | 'picture-too-bright'
  | 'too-far'
  | 'second-light'
  | 'lamp-partly'
  | 'outlining'
  | 'no-stone'
  | 'stone-cut-off'
  | 'ready';

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
