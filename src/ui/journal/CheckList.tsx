import type { BatchHistory } from '../../history/batchHistory';
import { countedActions } from '../../history/countedActions';
import type { CheckRecord, RecordId } from '../../journal/records';
import { texts } from '../../texts/speech';
import { Rich } from '../parts/Rich';
import { useJournal, useUndo } from '../stores';
import { ActionCounts } from './ActionCounts';
import { NameStones } from './NameStones';
import { Thumbnail } from './Thumbnail';

/** The checks of a batch, the newest first: day, step, how many stones got which verdict. */
export function CheckList({ history }: { history: BatchHistory }) {
  const { journal, verdicts } = texts();
  return (
    <ol className="checks">
      {history.checks.toReversed().map(({ check, photos }) => {
        return (
          <li key={check.id} className="check">
            {check.photo !== null && <Thumbnail photo={check.photo} day={check.day} />}
            <div>
              <p>
                <Rich
                  text={journal.checkLine(
                    check.day,
                    verdicts.stepsWithin[check.step],
                    check.stones.length,
                    photos.length,
                  )}
                />
              </p>
              <ActionCounts counts={countedActions(check)} />
              <p className="row-ways">
                {photos.map((photo) => (
                  <NameStones key={photo.id} history={history} photo={photo} />
                ))}
                <TakeOutCheck check={check} photos={photos.map(({ id }) => id)} />
              </p>
            </div>
          </li>
        );
      })}
    </ol>
  );
}

/** Takes a check with all its photos out of the batch, which can be undone. */
function TakeOutCheck({ check, photos }: { check: CheckRecord; photos: readonly RecordId[] }) {
  const { withdraw } = useJournal((state) => state);
  const { done } = useUndo();
  const takeOut = async () => {
    if (!(await withdraw(check.batch, photos, true))) return;
    const undo = () => void withdraw(check.batch, photos, false);
    done({ said: () => texts().journal.batch.takenOut(check.day), undo });
  };
  return (
    <button type="button" className="button button-quiet" onClick={takeOut}>
      {texts().journal.batch.takeOut}
    </button>
  );
}
