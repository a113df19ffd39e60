import { memo, useMemo } from 'react';
import type { Action } from '../../grading/opinion';
import type { WarningCode } from '../../image/notice';
import { sortingPicture } from '../../picture/sortingPicture';
import type { GradedPhoto } from '../../state/gradePhoto';
import { useSpeech } from '../useSpeech';

interface Props {
  readonly graded: GradedPhoto;
  readonly only: Action | null;
  /** The warning whose marks are brought out. */
  readonly lit: WarningCode | null;
  readonly dotsAcross: number;
}

/** The sorting picture as the command draws it, without the legend, which the page has as buttons. */
export const SortingOverlay = memo(function SortingOverlay({ graded, only, lit, dotsAcross }: Props) {
  const saidIn = useSpeech();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another language writes other words
  const inner = useMemo(
    () => ({ __html: sortingPicture(graded.report, graded.grades, { only, lit, dotsAcross }) }),
    [graded, only, lit, dotsAcross, saidIn],
  );
  return (
    <div
      className="sorting-picture"
      aria-hidden="true"
      // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by src/picture from numbers, never from a person's text
      dangerouslySetInnerHTML={inner}
    />
  );
});
