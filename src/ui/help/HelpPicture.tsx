import { type ReactNode, useMemo } from 'react';
import type { FlawReport } from '../../analysis/report';
import { flawMarks } from '../../picture/flawMarks';
import { StrokeSvg } from '../parts/StrokeSvg';
import pictures from './pictures.json';

export type HelpPictureName = keyof typeof pictures;

/** Side of every picture, pixels: they are squares. */
export const PICTURE_PX = 320;

const addresses: Readonly<Record<string, string>> = import.meta.glob('../../../sample-images/help/*.webp', {
  query: '?url',
  import: 'default',
  eager: true,
});

interface Props {
  readonly name: HelpPictureName;
  /** What is to be seen, for those who cannot see it. */
  readonly alt: string;
  /** True to mark its flaws as in the program. */
  readonly isMarked?: boolean;
  /** The caption. */
  readonly children: ReactNode;
}

/** One of our own rendered pictures, cut out by sample-images/help/crop.py, with a caption. */
export function HelpPicture({ name, alt, isMarked = false, children }: Props) {
  const { marks, mmPerPx } = pictures[name];
  const drawn = useMemo(
    () => (isMarked ? flawMarks(marksOf(marks), mmPerPx, 1.2, null) : ''),
    [isMarked, marks, mmPerPx],
  );
  return (
    <figure className="help-picture">
      <div>
        <img
          src={addresses[`../../../sample-images/help/${name}.webp`]}
          alt={alt}
          width={PICTURE_PX}
          height={PICTURE_PX}
          loading="lazy"
        />
        {isMarked && <StrokeSvg svg={drawn} viewBox={`0 0 ${PICTURE_PX} ${PICTURE_PX}`} />}
      </div>
      <figcaption>{children}</figcaption>
    </figure>
  );
}

/** Places of the truth file as the program reports its own. */
function marksOf(marks: (typeof pictures)[HelpPictureName]['marks']): FlawReport[] {
  return marks.map((mark) => ({ ...(mark as unknown as FlawReport), confidence: 1 }));
}
