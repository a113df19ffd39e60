import type { Action } from '../../grading/opinion';
import { ACTION_ORDER } from '../../picture/actionMarks';
import { texts } from '../../texts/speech';
import { ActionSign } from '../parts/ActionSign';

/** How many stones got which verdict. */
export function ActionCounts({ counts }: { counts: Readonly<Partial<Record<Action, number>>> }) {
  const { actions } = texts().verdicts;
  return (
    <ul className="check-actions">
      {ACTION_ORDER.filter((action) => (counts[action] ?? 0) > 0).map((action) => (
        <li key={action} className="check-action" data-action={action}>
          <ActionSign action={action} /> {actions[action]} <strong>{counts[action]}</strong>
        </li>
      ))}
    </ul>
  );
}
