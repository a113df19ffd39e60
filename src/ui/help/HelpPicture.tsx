import { useMemo } from 'react';
import type { FlawReport } from '../../analysis/report';
import { flawMarks } from '../../picture/flawMarks';
import { Rich } from '../parts/Rich';
import { StrokeSvg } from '../parts/StrokeSvg';
import pictures from './pictures.json';
import { useHelpTexts } from './useHelpTexts';

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
  /** True to mark its flaws as in the program. */
  readonly isMarked?: boolean;
  readonly caption: string;
}

/** One of our own rendered pictures, cut out by sample-images/help/crop.py, with a caption. */
export function HelpPicture({ name, isMarked = false, caption }: Props) {
  const { alts } = useHelpTexts();
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
          alt={alts[name]}
          width={PICTURE_PX}
          height={PICTURE_PX}
          loading="lazy"
        />
        {isMarked && <StrokeSvg svg={drawn} viewBox={`0 0 ${PICTURE_PX} ${PICTURE_PX}`} />}
      </div>
      <figcaption>
        <Rich text={caption} />
      </figcaption>
    </figure>
  );
}

/** Places of the truth file as the program reports its own. */
function marksOf(marks: (typeof pictures)[HelpPictureName]['marks']): FlawReport[] {
  return marks.map((mark) => ({ ...(mark as unknown as FlawReport), confidence: 1 }));
}
