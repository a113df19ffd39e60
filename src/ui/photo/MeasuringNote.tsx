import type { TrayPhoto } from '../../state/trayPhoto';
import { texts } from '../../texts/speech';
import { WorkLine } from '../parts/WorkLine';
import { useStoreActions } from '../stores';
import { overallShare } from './overallShare';

/** What is being done to the photo, how far it is, and a way to stop it. */
export function MeasuringNote({ photo }: { photo: TrayPhoto }) {
  const { cancel } = useStoreActions();
  const { progress } = photo;
  const words = texts().tray;
  return (
    <div className="note">
      <WorkLine
        words={progress === null ? words.waiting : words.stages[progress.stage]}
        share={progress === null ? 0 : overallShare(progress.stage, progress.share)}
        name={words.measuredSoFar}
        onCancel={progress === null ? null : cancel}
      />
    </div>
  );
}
