import type { Action } from '../../grading/opinion';
import type { StoneOutlook } from '../../history/stoneOutlook';

/** A stone's outlook beside its verdict: what a set-aside stone would still take, and how firm that is. */
export function outlookNote({ kind, sentence, isFirm }: StoneOutlook, action: Action): string {
  if (kind === 'ready' || (kind === 'other' && action === 'look-closer')) return '';
  const said =
    action === 'set-aside' && kind === 'clears'
      ? `If you grind on all the same: ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`
      : sentence;
  if (isFirm) return said;
  return `${said} Not firm: the checks do not all show the same side for certain. Photograph both sides.`;
}
