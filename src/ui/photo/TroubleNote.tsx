import { troubleSentence } from '../../state/explainFailure';
import type { TrayPhoto } from '../../state/trayPhoto';
import { texts } from '../../texts/speech';
import { useStoreActions } from '../stores';

interface Props {
  readonly photo: TrayPhoto;
  /** Asks the person to show where the ball lies. */
  readonly onPoint: () => void;
  readonly onSetup: () => void;
}

/** Why a photo has no sorting picture, and what can be done about it right here. */
export function TroubleNote({ photo, onPoint, onSetup }: Props) {
  const { dropShots, measureAgain, setLampMoved } = useStoreActions();
  const words = texts().tray;
  return (
    <div className="note note-trouble" role="alert">
      <p>{troubleSentence(photo)}</p>
      <div className="note-ways">
        {photo.code === 'no-ball' && (
          <>
            <button type="button" className="button button-strong" onClick={onPoint}>
              {words.showBall}
            </button>
            <button type="button" className="button" onClick={onSetup}>
              {words.ballSetup}
            </button>
          </>
        )}
        {photo.shots.length > 0 && (
          <button type="button" className="button" onClick={dropShots}>
            {words.withoutShot}
          </button>
        )}
        {photo.lampMoved !== null && (
          <button type="button" className="button" onClick={() => setLampMoved(null)}>
            {words.withoutSecond}
          </button>
        )}
        {photo.code === null && (
          <button type="button" className="button" onClick={measureAgain}>
            {words.measureAgain}
          </button>
        )}
      </div>
    </div>
  );
}
