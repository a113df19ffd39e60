import { useId } from 'react';
import type { Action } from '../../grading/opinion';
import { plainNumber } from '../../grading/plainNumber';
import type { StoneCheck } from '../../history/batchHistory';
import { checkGrade } from '../../history/checkGrade';
import type { StoneRecord } from '../../journal/records';
import { ACTION_MARKS, ACTION_ORDER } from '../../picture/actionMarks';
import { ActionSign } from '../parts/ActionSign';
import { STEP_WORDS } from '../setup/stepWords';
import { useJournal } from '../stores';
import { StonePicture } from './StonePicture';

/** A stone at one check: its sides, what was measured and advised, and what the owner did. */
export function StoneCheckRow({ seen, stone }: { seen: StoneCheck; stone: StoneRecord }) {
  const say = useJournal((state) => state.say);
  const id = useId();
  const { check, faces, decision } = seen;
  const { verdict, gloss, pitsPerCm2, fractureMm } = checkGrade(seen, stone.material);
  const decide = (action: Action) =>
    say([{ kind: 'decision', batch: check.batch, check: check.id, stone: stone.id, action }]);
  return (
    <li className="check">
      <div className="check-faces">
        {faces.map((face) => (
          <StonePicture key={face.photo.id} face={face} label={`Stone ${stone.name} on ${check.day}`} />
        ))}
      </div>
      <div>
        <p>
          <strong>{check.day}</strong>, after {STEP_WORDS[check.step]}
          {faces.length > 1 && `, ${faces.length} sides together`}
        </p>
        <p className="check-action" data-action={verdict.action}>
          <ActionSign action={verdict.action} /> {ACTION_MARKS[verdict.action].word}
        </p>
        <p className="fine">
          {plainNumber(faces[0].stone.lengthMm)} mm long, {plainNumber(pitsPerCm2)} pits per cm²,{' '}
          {plainNumber(fractureMm)} mm of fractures
          {gloss !== null &&
            `, ${plainNumber(gloss.gu60)} gloss units (${plainNumber(gloss.gu60Low)} to ${plainNumber(gloss.gu60High)})`}
        </p>
        <div className="field-beside">
          <label htmlFor={id}>You did</label>
          <select
            id={id}
            value={decision ?? ''}
            onChange={(event) => event.target.value !== '' && decide(event.target.value as Action)}
          >
            {decision === null && <option value="">not said</option>}
            {ACTION_ORDER.map((action) => (
              <option key={action} value={action}>
                {ACTION_MARKS[action].word.toLowerCase()}
              </option>
            ))}
          </select>
        </div>
      </div>
    </li>
  );
}
