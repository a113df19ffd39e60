import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { texts } from '../../texts/speech';

interface Props {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly onPoint: (row: number, column: number) => void;
  readonly onCancel: () => void;
}

/** One press of an arrow key moves the cross by this share of the photo's width. */
const STEP_SHARE = 0.02;

/** A cross that the arrow keys move and Enter sets down, for those who cannot tap the ball. */
export function BallPointer({ widthPx, heightPx, onPoint, onCancel }: Props) {
  const [[row, column], setPlace] = useState([heightPx / 2, widthPx / 2] as const);
  const ref = useRef<HTMLButtonElement>(null);
  useEffect(() => ref.current?.focus({ preventScroll: true }), []);
  const press = (event: KeyboardEvent) => {
    const stepPx = STEP_SHARE * widthPx;
    const moves: Record<string, readonly [number, number]> = {
      ArrowUp: [-stepPx, 0],
      ArrowDown: [stepPx, 0],
      ArrowLeft: [0, -stepPx],
      ArrowRight: [0, stepPx],
    };
    const move = moves[event.key];
    if (event.key === 'Escape') onCancel();
    if (move === undefined) return;
    event.preventDefault();
    const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
    setPlace([within(row + move[0], heightPx), within(column + move[1], widthPx)]);
  };
  return (
    <button
      ref={ref}
      type="button"
      className="ball-pointer"
      aria-label={texts().tray.ballCross}
      style={{ left: `${(100 * column) / widthPx}%`, top: `${(100 * row) / heightPx}%` }}
      onKeyDown={press}
      onClick={() => onPoint(row, column)}
    />
  );
}
