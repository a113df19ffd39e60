import type { Action } from '../../grading/opinion';
import { ACTION_MARKS } from '../../picture/actionMarks';

/** The sign of an action in the ink of the page's theme. */
export function ActionSign({ action, className = 'action-sign' }: { action: Action; className?: string }) {
  return (
    <svg
      className={className}
      viewBox="-1 -1 12 12"
      data-action={action}
      aria-hidden="true"
      focusable="false"
    >
      <path
        d={ACTION_MARKS[action].glyph}
        fill="none"
        stroke="currentColor"
        strokeWidth="1.5"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
