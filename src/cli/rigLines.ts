import type { PhotoReport } from '../analysis/report';
import { rigAdvice } from '../grading/rigAdvice';
import { rigNotes } from '../grading/rigNotes';

/**
 * What is said about lamp and camera of one photo: how they compare with the remembered ones, and what to change.
 *
 * @param report - Of a photo measured with a rig given, or about to be saved as one.
 * @param isSaved - True when this photo's lamp and camera are saved: all advice is then given, also that all is in order.
 */
export function rigLines({ rig, rigCheck, ball }: PhotoReport, isSaved: boolean): string {
  const compared = rigCheck ? rigNotes(rigCheck) : [];
  const advice = ball ? rigAdvice(rig).filter(({ inOrder }) => isSaved || !inOrder) : [];
  return [...compared, ...advice.map(({ sentence }) => sentence)].map((line) => `  rig: ${line}`).join('\n');
}
