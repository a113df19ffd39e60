import { type CSSProperties, type ReactNode, useRef, useState } from 'react';
import type { FoundStones } from '../../analysis/options';
import type { Action } from '../../grading/opinion';
import type { WarningCode } from '../../image/notice';
import { stoneAt } from '../../picture/stoneAt';
import type { GradedPhoto } from '../../state/gradePhoto';
import { texts } from '../../texts/speech';
import { SMALL_PX, type SmallPhoto } from '../photo/smallPhoto';
import { usePhotoSource } from '../photo/usePhotoSource';
import { usePhotos, useStoreActions } from '../stores';
import { BallPointer } from './BallPointer';
import { FoundOutlines } from './FoundOutlines';
import { SelectedStone } from './SelectedStone';
import { SortingOverlay } from './SortingOverlay';
import { StoneButtons } from './StoneButtons';
import { usePanZoom } from './usePanZoom';
import { ZoomButtons } from './ZoomButtons';

interface Props {
  /** Null while the photo is on its way. */
  readonly file: Blob | null;
  /** The same brought to the screen's size; null until it is. */
  readonly small: SmallPhoto | null;
  /** Address of a picture that is shown until the photo is. */
  readonly standIn: string | null;
  /** The stones as soon as they are found; null before, and left out once they are judged. */
  readonly found: FoundStones | null;
  readonly graded: GradedPhoto | null;
  readonly only: Action | null;
  /** The warning whose marks are brought out. */
  readonly lit: WarningCode | null;
  readonly pointing: boolean;
  readonly onPointed: () => void;
  /** What photo this is; stands beside the zoom buttons. */
  readonly children: ReactNode;
}

/** A touch this many CSS pixels beside a stone still means it. */
const REACH = 22;
/** The small picture is shown until it would be enlarged by more. */
const MOST_ENLARGED = 1.25;

/** The photo with its sorting picture: pan, zoom, tap a stone, or point at the ball. */
export function TrayPicture({
  file,
  small,
  standIn,
  found,
  graded,
  only,
  lit,
  pointing,
  onPointed,
  children,
}: Props) {
  const stageRef = useRef<HTMLDivElement>(null);
  const [standInSize, setStandInSize] = useState({ width: 3, height: 2 });
  const size = small === null ? standInSize : { width: small.widthPx, height: small.heightPx };
  const { selectStone, pointAtBall } = useStoreActions();
  const selected = usePhotos((state) => state.selectedStone);
  const stone = graded?.report.stones.find(({ id }) => id === selected) ?? null;
  const point = (row: number, column: number) => {
    pointAtBall([row, column]);
    onPointed();
  };
  const tap = (row: number, column: number, pxPerDot: number) => {
    if (pointing) point(row, column);
    else if (graded !== null)
      selectStone(stoneAt(graded.report.stones, [row, column], REACH * pxPerDot)?.id ?? null);
  };
  const { place, view, pointerHandlers, enlarge, fit, reveal } = usePanZoom(stageRef, size, tap);
  const isEnlarged =
    place !== null && Math.max(place.width, place.height) * devicePixelRatio > MOST_ENLARGED * SMALL_PX;
  const smallSource = usePhotoSource(small?.picture ?? null);
  const wholeSource = usePhotoSource(isEnlarged ? file : null);
  const source = wholeSource ?? smallSource ?? standIn;
  const dotsAcross = Math.round((place === null ? 900 : Math.max(place.width, place.height)) / 50) * 50;
  return (
    <>
      <div className="title-row" id="tray-picture">
        {children}
        <ZoomButtons zoomed={view.zoom > 1.01} onEnlarge={enlarge} onFit={fit} />
      </div>
      <div
        ref={stageRef}
        className="stage"
        data-pointing={pointing}
        style={{ '--shape': `${size.width} / ${size.height}` } as CSSProperties}
        {...pointerHandlers}
      >
        <div className="stage-photo" style={place ?? { visibility: 'hidden' }}>
          {source !== null && (
            <img
              src={source}
              alt={texts().tray.trayOfStones}
              draggable={false}
              onLoad={(event) =>
                setStandInSize({
                  width: event.currentTarget.naturalWidth,
                  height: event.currentTarget.naturalHeight,
                })
              }
            />
          )}
          {graded === null && found !== null && <FoundOutlines found={found} />}
          {graded !== null && (
            <SortingOverlay graded={graded} only={only} lit={lit} dotsAcross={dotsAcross} />
          )}
          {graded !== null && stone !== null && (
            <SelectedStone stone={stone} widthPx={graded.report.widthPx} heightPx={graded.report.heightPx} />
          )}
          {graded !== null && !pointing && <StoneButtons graded={graded} onReveal={reveal} />}
          {pointing && (
            <BallPointer widthPx={size.width} heightPx={size.height} onPoint={point} onCancel={onPointed} />
          )}
        </div>
      </div>
    </>
  );
}
