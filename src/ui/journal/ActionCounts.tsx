import type { Action } from '../../grading/opinion';
import { ACTION_MARKS, ACTION_ORDER } from '../../picture/actionMarks';
import { ActionSign } from '../parts/ActionSign';

/** How many stones got which verdict. */
export function ActionCounts({ counts }: { counts: Readonly<Partial<Record<Action, number>>> }) {
  return (
    <ul className="check-actions">
      {ACTION_ORDER.filter((action) => (counts[action] ?? 0) > 0).map((action) => (
        <li key={action} className="check-action" data-action={action}>
          <ActionSign action={action} /> {ACTION_MARKS[action].word} <strong>{counts[action]}</strong>
        </li>
      ))}
    </ul>
  );
}
