import type { Action } from '../../grading/opinion';
import { ACTION_MARKS } from '../../picture/actionMarks';

/** A piece of the line that an action's stones are outlined with. */
export function ActionLine({ action }: { action: Action }) {
  const { dashes, weight, cap, split } = ACTION_MARKS[action];
  const width = 2.6 * weight;
  return (
    <svg className="action-line" viewBox="0 0 44 8" data-action={action} aria-hidden="true" focusable="false">
      <path
        d="M3 4H41"
        stroke="currentColor"
        strokeWidth={width}
        strokeDasharray={dashes.map((dash) => dash * width).join(' ') || undefined}
        strokeLinecap={cap}
      />
      {split && <path d="M3 4H41" className="action-line-split" strokeWidth="1.4" />}
    </svg>
  );
}
