import type { TrayPhoto } from '../../state/trayPhoto';
import { useStoreActions } from '../stores';
import { overallShare, STAGE_WORDS } from './stageWords';

/** What is being done to the photo, how far it is, and a way to stop it. */
export function MeasuringNote({ photo }: { photo: TrayPhoto }) {
  const { cancel } = useStoreActions();
  const { progress } = photo;
  const words = progress === null ? 'Waiting for its turn' : STAGE_WORDS[progress.stage];
  return (
    <div className="note note-measuring">
      <p role="status">{words} …</p>
      <progress
        value={progress === null ? 0 : overallShare(progress.stage, progress.share)}
        aria-label="Measured so far"
      />
      {progress !== null && (
        <button type="button" className="button" onClick={cancel}>
          Cancel
        </button>
      )}
    </div>
  );
}
