import type { StoneGrade } from '../../grading/gradeStone';
import { ACTION_MARKS } from '../../picture/actionMarks';
import { ActionSign } from '../parts/ActionSign';

/** What to do with the stone, big, and why. */
export function VerdictPart({ verdict }: { verdict: StoneGrade['verdict'] }) {
  return (
    <div className="verdict">
      <p className="verdict-word">
        <ActionSign action={verdict.action} />
        {ACTION_MARKS[verdict.action].word}
      </p>
      <ul className="reasons">
        {verdict.reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    </div>
  );
}
