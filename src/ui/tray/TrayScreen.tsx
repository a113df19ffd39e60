import { type CSSProperties, lazy, Suspense, useEffect, useState } from 'react';
import type { Action } from '../../grading/opinion';
import type { WarningCode } from '../../image/notice';
import { troubleSentence } from '../../state/explainFailure';
import { texts } from '../../texts/speech';
import { LampMovedLine } from '../photo/LampMovedLine';
import { MeasuringNote } from '../photo/MeasuringNote';
import { PhotoStrip } from '../photo/PhotoStrip';
import { RemovePhoto } from '../photo/RemovePhoto';
import { ShotsLine } from '../photo/ShotsLine';
import { TroubleNote } from '../photo/TroubleNote';
import { usePhotoBitmap } from '../photo/usePhotoBitmap';
import { useSmallPhoto } from '../photo/useSmallPhoto';
import { GradingChoices } from '../setup/GradingChoices';
import { useCurrentPhoto, useGradedInMind, usePhotos, useSamplePicture } from '../stores';
import { ComingSample } from './ComingSample';
import { PhotoTitle } from './PhotoTitle';
import { TrayPicture } from './TrayPicture';

/** Opened at the bench only. */
const BenchView = lazy(() => import('../bench/BenchView').then(({ BenchView: view }) => ({ default: view })));

const openResults = () => import('./TrayResults').then(({ TrayResults: results }) => ({ default: results }));
/** Loaded while the first photo is measured. */
const TrayResults = lazy(openResults);

/** The photo with its sorting picture, the choices that decide the verdicts, and the stones to pick out. */
export function TrayScreen({ onSetup }: { onSetup: () => void }) {
  const photo = useCurrentPhoto();
  const graded = useGradedInMind();
  const selected = usePhotos((state) => state.selectedStone);
  const small = useSmallPhoto(photo?.file ?? null);
  // Stones are cut out of it, so it waits for them: while the photo is measured there is little memory to spare.
  const bitmap = usePhotoBitmap(photo !== null && graded !== null ? photo.file : null);
  const [only, setOnly] = useState<Action | null>(null);
  const [pointing, setPointing] = useState(false);
  const [bench, setBench] = useState(false);
  const [lit, setLit] = useState<WarningCode | null>(null);
  const hasPhoto = photo !== null;
  useEffect(() => {
    if (hasPhoto) openResults().catch(() => undefined);
  }, [hasPhoto]);
  const sampleIsComing = usePhotos((state) => state.sampleIsComing);
  const samplePicture = useSamplePicture();
  if (photo === null && sampleIsComing && samplePicture !== null)
    return <ComingSample picture={samplePicture} />;
  if (photo === null) return <p className="empty">{texts().tray.empty}</p>;
  const isOpen = graded?.report.stones.some(({ id }) => id === selected) ?? false;
  const present =
    only !== null && graded?.grades.some(({ verdict }) => verdict.action === only) ? only : null;
  return (
    <div className="tray" data-open={isOpen} style={{ '--lift': small?.lift ?? 1 } as CSSProperties}>
      <div className="tray-photo">
        <PhotoStrip />
        <TrayPicture
          key={photo.id}
          file={photo.file}
          small={small}
          standIn={photo.sample ? samplePicture : null}
          found={photo.progress?.found ?? null}
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
        {!photo.sample && <RemovePhoto photo={photo} />}
        {(photo.status === 'measuring' || photo.status === 'waiting') && <MeasuringNote photo={photo} />}
        {troubleSentence(photo) !== null && !pointing && (
          <TroubleNote photo={photo} onPoint={() => setPointing(true)} onSetup={onSetup} />
        )}
      </div>
      {bench && graded !== null && (
        <Suspense>
          <BenchView graded={graded} file={photo.file} onClose={() => setBench(false)} />
        </Suspense>
      )}
      <div className="tray-side">
        <GradingChoices />
        {graded !== null && (
          <Suspense>
            <TrayResults
              photo={photo}
              graded={graded}
              bitmap={bitmap}
              only={present}
              onOnly={setOnly}
              onBench={() => setBench(true)}
            />
          </Suspense>
        )}
      </div>
    </div>
  );
}
