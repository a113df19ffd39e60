import type { Action } from '../../grading/opinion';
import type { StoneOutlook } from '../../history/stoneOutlook';
import { texts } from '../../texts/speech';

/** A stone's outlook beside its verdict: what a set-aside stone would still take, and how firm that is. */
export function outlookNote({ kind, sentence, isFirm }: StoneOutlook, action: Action): string {
  if (kind === 'ready' || (kind === 'other' && action === 'look-closer')) return '';
  const words = texts().journal.stone;
  const said = action === 'set-aside' && kind === 'clears' ? words.grindOn(sentence) : sentence;
  if (isFirm) return said;
  return `${said} ${words.notFirm}`;
}
