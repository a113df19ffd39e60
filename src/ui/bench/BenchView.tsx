import { type CSSProperties, useEffect, useId, useRef, useState } from 'react';
import { stoneBox } from '../../picture/stoneBox';
import type { GradedPhoto } from '../../state/gradePhoto';
import { texts } from '../../texts/speech';
import { ActionSign } from '../parts/ActionSign';
import { usePhotoSource } from '../photo/usePhotoSource';
import { SelectedStone } from '../tray/SelectedStone';
import { SortingOverlay } from '../tray/SortingOverlay';
import { type BenchStop, benchStops, stopAfter } from './benchStops';

interface Props {
  readonly graded: GradedPhoto;
  readonly file: Blob;
  readonly onClose: () => void;
}

/** Labels are drawn as large as in a picture of this width, CSS pixels. */
const DOTS_ACROSS = 420;
/** How much a single stone is enlarged. */
const CLOSE = 2;

/** The sorting picture in large print, to be followed from arm's length: pile by pile, stone by stone. */
export function BenchView({ graded, file, onClose }: Props) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  const [at, setAt] = useState(0);
  const words = texts().tray.bench;
  const stops = benchStops(graded);
  const stop = stops[Math.min(at, stops.length - 1)];
  useEffect(() => {
    ref.current?.showModal();
    ref.current?.querySelector<HTMLElement>('.bench-next')?.focus();
  }, []);
  if (stop === undefined) return null;
  const go = (step: 1 | -1 | 'pile') => setAt(stopAfter(stops, at, step));
  return (
    <dialog
      ref={ref}
      className="bench"
      aria-labelledby={titleId}
      onClose={onClose}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key === 'ArrowRight') go(1);
        if (event.key === 'ArrowLeft') go(-1);
        if (event.key === 'ArrowDown') go('pile');
      }}
    >
      <BenchPicture graded={graded} file={file} stop={stop} />
      <div className="bench-said" data-action={stop.action} role="status">
        <ActionSign action={stop.action} className="bench-sign" />
        <div>
          <h2 id={titleId}>{headOf(stop)}</h2>
          {stop.stone === null ? (
            <p>
              {texts().tray.errands[stop.action]}{' '}
              <strong className="bench-numbers">{stop.pile.join(', ')}</strong>
            </p>
          ) : (
            <p>{graded.grades.find(({ id }) => id === stop.stone)?.verdict.reasons[0]}</p>
          )}
        </div>
      </div>
      <div className="bench-ways">
        <button type="button" className="button bench-next button-strong" onClick={() => go(1)}>
          {words.next}
        </button>
        <button type="button" className="button" onClick={() => go(-1)}>
          {words.back}
        </button>
        <button type="button" className="button" onClick={() => go('pile')}>
          {words.nextPile}
        </button>
        <button type="button" className="button" onClick={() => ref.current?.close()}>
          {words.close}
        </button>
      </div>
    </dialog>
  );
}

function headOf({ action, stone }: BenchStop): string {
  const { verdicts } = texts();
  return stone === null
    ? verdicts.actions[action]
    : texts().tray.stoneAndVerdict(verdicts.stone(stone), verdicts.actions[action]);
}

function BenchPicture({ graded, file, stop }: Pick<Props, 'graded' | 'file'> & { stop: BenchStop }) {
  const source = usePhotoSource(file);
  const { widthPx, heightPx, stones } = graded.report;
  const stone = stones.find(({ id }) => id === stop.stone) ?? null;
  const box = stone && stoneBox(stone.outline);
  // Moves the stone's middle to the middle of the stage, in shares of the picture's own size.
  const share = (middle: number, whole: number) => `${100 * CLOSE * (0.5 - middle / whole)}%`;
  const translate = box
    ? `${share(box.column + box.width / 2, widthPx)} ${share(box.row + box.height / 2, heightPx)}`
    : '0% 0%';
  const style = { '--wide': widthPx / heightPx, translate, scale: box ? CLOSE : 1 };
  return (
    <div className="bench-stage">
      <div className="bench-photo" style={style as CSSProperties}>
        {source !== null && <img src={source} alt={texts().tray.trayOfStones} />}
        <SortingOverlay
          graded={graded}
          only={stop.action}
          lit={null}
          dotsAcross={DOTS_ACROSS * style.scale}
        />
        {stone !== null && <SelectedStone stone={stone} widthPx={widthPx} heightPx={heightPx} />}
      </div>
    </div>
  );
}
