import type { StoneGrade } from '../../grading/gradeStone';
import { texts } from '../../texts/speech';
import { ActionSign } from '../parts/ActionSign';
import { HelpLink } from '../parts/HelpLink';

/** What to do with the stone, big, and why. */
export function VerdictPart({ verdict }: { verdict: StoneGrade['verdict'] }) {
  return (
    <div className="verdict">
      <p className="verdict-word">
        <ActionSign action={verdict.action} />
        {texts().verdicts.actions[verdict.action]}
        <HelpLink to="verdicts" />
      </p>
      <ul className="reasons">
        {verdict.reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    </div>
  );
}
