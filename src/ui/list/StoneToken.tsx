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
    if (ref.current !== null && bitmap !== null) drawToken(ref.current, bitmap, stone);
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

/** Tokens drawn before: with another verdict a stone's token is made anew in another group, and looks the same. */
const drawn = new WeakMap<ImageBitmap, WeakMap<StoneReport, HTMLCanvasElement>>();

function drawToken(canvas: HTMLCanvasElement, bitmap: ImageBitmap, stone: StoneReport): void {
  const known = drawn.get(bitmap) ?? new WeakMap();
  drawn.set(bitmap, known);
  const before = known.get(stone);
  if (before) canvas.getContext('2d')?.drawImage(before, 0, 0);
  else {
    drawCutOut(canvas, bitmap, stone, 4);
    known.set(stone, canvas);
  }
}
