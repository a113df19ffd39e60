import { useEffect, useRef } from 'react';
import type { StoneReport } from '../../analysis/report';
import type { Action } from '../../grading/opinion';
import { texts } from '../../texts/speech';
import { usePhotos } from '../stores';
import { drawCutOut } from './drawCutOut';

interface Props {
  readonly stone: StoneReport;
  readonly action: Action;
  readonly bitmap: ImageBitmap | null;
}

/** Canvas pixels along one side; twice what is shown, for dense screens. */
const SIDE_PX = 144;

/** A stone to be picked out: cut out of the photo, with its number; opens its detail. */
export function StoneToken({ stone, action, bitmap }: Props) {
  const ref = useRef<HTMLCanvasElement>(null);
  const selectStone = usePhotos((state) => state.selectStone);
  const selected = usePhotos((state) => state.selectedStone) === stone.id;
  const { tray, verdicts } = texts();
  useEffect(() => {
    if (ref.current !== null && bitmap !== null) drawCutOut(ref.current, bitmap, stone, 4);
  }, [bitmap, stone]);
  return (
    <button
      type="button"
      className="token"
      aria-pressed={selected}
      aria-label={tray.stoneAndVerdict(verdicts.stone(stone.id), verdicts.actions[action])}
      onClick={() => selectStone(stone.id)}
    >
      <canvas ref={ref} width={SIDE_PX} height={SIDE_PX} />
      <span className="token-number">{stone.id}</span>
    </button>
  );
}
