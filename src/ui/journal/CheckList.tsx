import type { BatchHistory } from '../../history/batchHistory';
import { countedActions } from '../../history/countedActions';
import { STEP_WORDS } from '../setup/stepWords';
import { ActionCounts } from './ActionCounts';
import { NameStones } from './NameStones';
import { Thumbnail } from './Thumbnail';

/** The checks of a batch, the newest first: day, step, how many stones got which verdict. */
export function CheckList({ history }: { history: BatchHistory }) {
  return (
    <ol className="checks">
      {history.checks.toReversed().map(({ check, photos }) => {
        return (
          <li key={check.id} className="check">
            {check.photo !== null && <Thumbnail photo={check.photo} day={check.day} />}
            <div>
              <p>
                <strong>{check.day}</strong>, after {STEP_WORDS[check.step]}, {check.stones.length}{' '}
                {check.stones.length === 1 ? 'stone' : 'stones'}
                {photos.length > 1 && `, ${photos.length} sides`}
              </p>
              <ActionCounts counts={countedActions(check)} />
              {photos.map((photo) => (
                <NameStones key={photo.id} history={history} photo={photo} />
              ))}
            </div>
          </li>
        );
      })}
    </ol>
  );
}
