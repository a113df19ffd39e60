import type { TrayPhoto } from '../../state/trayPhoto';
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
  return (
    <div className="note note-trouble" role="alert">
      <p>{photo.sentence}</p>
      <div className="note-ways">
        {photo.code === 'no-ball' && (
          <>
            <button type="button" className="button button-strong" onClick={onPoint}>
              Show where the ball is
            </button>
            <button type="button" className="button" onClick={onSetup}>
              Ball and lamp setup
            </button>
          </>
        )}
        {photo.shots.length > 0 && (
          <button type="button" className="button" onClick={dropShots}>
            Measure without the added shot
          </button>
        )}
        {photo.lampMoved !== null && (
          <button type="button" className="button" onClick={() => setLampMoved(null)}>
            Measure without the second photo
          </button>
        )}
        {photo.code === null && (
          <button type="button" className="button" onClick={measureAgain}>
            Measure it again
          </button>
        )}
      </div>
    </div>
  );
}
