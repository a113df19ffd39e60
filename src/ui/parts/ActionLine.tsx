import type { Action } from '../../grading/opinion';
import { ACTION_MARKS } from '../../picture/actionMarks';

/** A rule across the page in the line that an action's stones are outlined with. */
export function ActionLine({ action }: { action: Action }) {
  const { dashes, weight, cap, split } = ACTION_MARKS[action];
  const width = 3 * weight;
  return (
    <svg className="action-line" data-action={action} aria-hidden="true" focusable="false">
      <line
        x1="3"
        x2="100%"
        y1="5"
        y2="5"
        stroke="currentColor"
        strokeWidth={width}
        strokeDasharray={dashes.map((dash) => dash * width).join(' ') || undefined}
        strokeLinecap={cap}
      />
      {split && <line x1="0" x2="100%" y1="5" y2="5" className="action-line-split" strokeWidth="1.8" />}
    </svg>
  );
}
