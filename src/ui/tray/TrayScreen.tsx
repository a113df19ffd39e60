import { type CSSProperties, useMemo, useState } from 'react';
import type { Action } from '../../grading/opinion';
import type { WarningCode } from '../../image/notice';
import { KeepCheck } from '../keep/KeepCheck';
import { StoneList } from '../list/StoneList';
import { displayLift } from '../photo/displayLift';
import { LampMovedLine } from '../photo/LampMovedLine';
import { MeasuringNote } from '../photo/MeasuringNote';
import { PhotoStrip } from '../photo/PhotoStrip';
import { ShotsLine } from '../photo/ShotsLine';
import { TroubleNote } from '../photo/TroubleNote';
import { usePhotoBitmap } from '../photo/usePhotoBitmap';
import { GradingChoices } from '../setup/GradingChoices';
import { StoneDetail } from '../stone/StoneDetail';
import { useCurrentPhoto, useGraded, useGradedInMind, usePhotos } from '../stores';
import { PhotoTitle } from './PhotoTitle';
import { TrayPicture } from './TrayPicture';

/** The photo with its sorting picture, the choices that decide the verdicts, and the stones to pick out. */
export function TrayScreen({ onSetup }: { onSetup: () => void }) {
  const photo = useCurrentPhoto();
  const plain = useGraded();
  const graded = useGradedInMind();
  const selected = usePhotos((state) => state.selectedStone);
  const bitmap = usePhotoBitmap(photo?.file ?? null);
  const lift = useMemo(() => (bitmap === null ? 1 : displayLift(bitmap)), [bitmap]);
  const [only, setOnly] = useState<Action | null>(null);
  const [pointing, setPointing] = useState(false);
  const [lit, setLit] = useState<WarningCode | null>(null);
  if (photo === null) return <p className="empty">Take or choose a photo of your tray.</p>;
  const stone = graded?.report.stones.find(({ id }) => id === selected) ?? null;
  const grade = graded?.grades.find(({ id }) => id === selected) ?? null;
  const present =
    only !== null && graded?.grades.some(({ verdict }) => verdict.action === only) ? only : null;
  return (
    <div className="tray" data-open={stone !== null} style={{ '--lift': lift } as CSSProperties}>
      <div className="tray-photo">
        <PhotoStrip />
        <TrayPicture
          key={photo.id}
          photo={photo}
          graded={graded}
          only={present}
          lit={lit}
          pointing={pointing}
          onPointed={() => setPointing(false)}
        >
          <PhotoTitle photo={photo} pointing={pointing} onPointing={setPointing} lit={lit} onLit={setLit} />
        </TrayPicture>
        {photo.status === 'measured' && !photo.sample && <ShotsLine photo={photo} />}
        {photo.status === 'measured' && !photo.sample && <LampMovedLine photo={photo} />}
        {(photo.status === 'measuring' || photo.status === 'waiting') && <MeasuringNote photo={photo} />}
        {photo.sentence !== null && !pointing && (
          <TroubleNote photo={photo} onPoint={() => setPointing(true)} onSetup={onSetup} />
        )}
      </div>
      <div className="tray-side">
        <GradingChoices />
        {graded !== null && stone !== null && grade !== null && (
          <StoneDetail key={stone.id} stone={stone} grade={grade} report={graded.report} bitmap={bitmap} />
        )}
        {graded !== null && (
          <StoneList graded={graded} bitmap={bitmap} name={photo.name} only={present} onOnly={setOnly} />
        )}
        {plain !== null && plain.report.stones.length > 0 && !photo.sample && (
          <KeepCheck key={photo.id} photo={photo} graded={plain} bitmap={bitmap} />
        )}
      </div>
    </div>
  );
}
