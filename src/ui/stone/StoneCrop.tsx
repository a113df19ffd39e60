import { useEffect, useRef, useState } from 'react';
import type { FlawReport, StoneReport } from '../../analysis/report';
import { flawMarks } from '../../picture/flawMarks';
import { texts } from '../../texts/speech';
import { StrokeSvg } from '../parts/StrokeSvg';
import { cropSquare } from './cropSquare';

interface Props {
  readonly stone: StoneReport;
  /** The flaws to mark, in the order of their list. */
  readonly flaws: readonly FlawReport[];
  readonly mmPerPx: number;
  readonly bitmap: ImageBitmap | null;
  /** Index of the flaw to bring out; null for none. */
  readonly lit: number | null;
}

/** CSS pixels across the crop on a phone; lines are drawn for this size. */
const DOTS_ACROSS = 360;
/** Canvas pixels across, for dense screens. */
const SIDE_PX = 900;

/** The stone enlarged, with its flaws marked; the marks can be taken off to see what lies under them. */
export function StoneCrop({ stone, flaws, mmPerPx, bitmap, lit }: Props) {
  const ref = useRef<HTMLCanvasElement>(null);
  const words = texts().stone;
  const [marked, setMarked] = useState(true);
  const square = cropSquare(stone.outline);
  useEffect(() => {
    const context = ref.current?.getContext('2d');
    if (context == null || bitmap === null) return;
    const { row, column, width, height } = cropSquare(stone.outline);
    context.imageSmoothingQuality = 'high';
    context.clearRect(0, 0, SIDE_PX, SIDE_PX);
    context.drawImage(bitmap, column, row, width, height, 0, 0, SIDE_PX, SIDE_PX);
  }, [bitmap, stone]);
  const viewBox = `${square.column} ${square.row} ${square.width} ${square.height}`;
  return (
    <figure className="crop">
      <div className="crop-frame">
        <canvas
          ref={ref}
          width={SIDE_PX}
          height={SIDE_PX}
          role="img"
          aria-label={words.enlarged(texts().verdicts.stone(stone.id))}
        />
        {marked && (
          <StrokeSvg
            className="crop-marks"
            viewBox={viewBox}
            svg={flawMarks(flaws, mmPerPx, square.width / DOTS_ACROSS, lit)}
          />
        )}
      </div>
      {flaws.length > 0 && (
        <button
          type="button"
          className="button button-quiet"
          aria-pressed={marked}
          onClick={() => setMarked(!marked)}
        >
          {marked ? words.hideMarks : words.showMarks}
        </button>
      )}
    </figure>
  );
}
