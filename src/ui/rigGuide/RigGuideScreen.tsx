import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import { troubleSentence } from '../../state/explainFailure';
import { RigDrawing } from '../help/RigDrawing';
import { MeasuringNote } from '../photo/MeasuringNote';
import { PhotoButtons } from '../photo/PhotoButtons';
import { TroubleNote } from '../photo/TroubleNote';
import { BallChoice } from '../setup/BallChoice';
import { RigPart } from '../setup/RigPart';
import { useCurrentPhoto, useSettings } from '../stores';
import { useSpeech } from '../useSpeech';
import { liveRigGuide } from './liveRigGuide';

/** Sets lamp, camera and ball up step by step, with what the live picture says about each. */
export function RigGuideScreen({ onSetup }: { onSetup: () => void }) {
  const words = useSpeech().texts.rigGuide;
  const [, go] = useLocation();
  const current = useCurrentPhoto();
  const rig = useSettings((state) => state.rig);
  const ballMm = useSettings((state) => state.ballMm);
  const photo = current?.sample === true ? null : current;
  const isBusy = photo?.status === 'measuring' || photo?.status === 'waiting';
  const isSeen = photo?.report?.ball !== undefined && photo.report.ball !== null;
  return (
    <div className="guide">
      <h2>{words.title}</h2>
      <p>{words.lead}</p>
      <ol className="guide-steps">
        <Step title={words.steps.place}>
          <RigDrawing />
          <p>{words.placeHow}</p>
          <p>
            <Link href="/help/setup">{words.placeMore}</Link>
          </p>
        </Step>
        <Step title={words.steps.ball}>
          <BallChoice />
        </Step>
        <Step title={words.steps.look} isDone={isSeen}>
          <p>{words.lookHow}</p>
          <p className="fine">{words.lookFile}</p>
          <PhotoButtons guide={(framing, shotPx) => liveRigGuide(framing, shotPx, ballMm)} />
          {photo !== null && isBusy && <MeasuringNote photo={photo} />}
          {photo !== null && troubleSentence(photo) !== null && (
            <TroubleNote photo={photo} onPoint={() => go('/')} onSetup={onSetup} />
          )}
        </Step>
        <Step title={words.steps.remember} isDone={rig !== null}>
          {photo?.report ? <RigPart /> : <p className="fine">{words.looking}</p>}
          {rig !== null && (
            <>
              <p>{words.mark}</p>
              <p className="guide-next">
                <Link href="/start" className="button">
                  {words.nextBatch}
                </Link>
                <Link href="/" className="button">
                  {words.nextTray}
                </Link>
              </p>
            </>
          )}
        </Step>
      </ol>
    </div>
  );
}

function Step({ title, isDone = false, children }: { title: string; isDone?: boolean; children: ReactNode }) {
  const words = useSpeech().texts.rigGuide;
  return (
    <li className="guide-step" data-done={isDone}>
      <h3>
        {title}
        {isDone && <span className="guide-done"> {words.done}</span>}
      </h3>
      {children}
    </li>
  );
}
