import { useEffect, useState } from 'react';
import type { CheckRecord, RecordId } from '../../journal/records';
import { ACTION_MARKS, ACTION_ORDER } from '../../picture/actionMarks';
import { ActionSign } from '../parts/ActionSign';
import { STEP_WORDS } from '../setup/stepWords';
import { useJournal } from '../stores';
import { Thumbnail } from './Thumbnail';

/** The checks of a batch, the newest first: day, step, how many stones got which verdict. */
export function CheckList({ batch, count }: { batch: RecordId; count: number }) {
  const checksOf = useJournal((state) => state.checksOf);
  const [checks, setChecks] = useState<readonly CheckRecord[] | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a check more is a reason to read them again
  useEffect(() => {
    let isStale = false;
    checksOf(batch).then((found) => !isStale && setChecks([...found].reverse()));
    return () => {
      isStale = true;
    };
  }, [batch, checksOf, count]);
  if (checks === null) return null;
  return (
    <ol className="checks">
      {checks.map((check) => (
        <li key={check.id} className="check">
          {check.photo !== null && <Thumbnail photo={check.photo} day={check.day} />}
          <div>
            <p>
              <strong>{check.day}</strong>, after {STEP_WORDS[check.step]}, {check.stones.length}{' '}
              {check.stones.length === 1 ? 'stone' : 'stones'}
            </p>
            <ul className="check-actions">
              {ACTION_ORDER.map((action) => {
                const count = check.stones.filter((stone) => stone.action === action).length;
                return (
                  count > 0 && (
                    <li key={action} className="check-action" data-action={action}>
                      <ActionSign action={action} /> {ACTION_MARKS[action].word} <strong>{count}</strong>
                    </li>
                  )
                );
              })}
            </ul>
          </div>
        </li>
      ))}
    </ol>
  );
}
