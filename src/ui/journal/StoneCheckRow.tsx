import { useId } from 'react';
import type { Action } from '../../grading/opinion';
import type { StoneCheck } from '../../history/batchHistory';
import { checkGrade } from '../../history/checkGrade';
import type { StoneRecord } from '../../journal/records';
import { ACTION_ORDER } from '../../picture/actionMarks';
import { densityNumber, densityUnit, lengthWords } from '../../texts/measures';
import { ownWords } from '../../texts/ownWords';
import { plainNumber } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { ActionSign } from '../parts/ActionSign';
import { Rich } from '../parts/Rich';
import { useJournal } from '../stores';
import { StonePicture } from './StonePicture';

/** A stone at one check: its sides, what was measured and advised, and what the owner did. */
export function StoneCheckRow({ seen, stone }: { seen: StoneCheck; stone: StoneRecord }) {
  const say = useJournal((state) => state.say);
  const id = useId();
  const { journal, verdicts } = texts();
  const words = journal.stone;
  const { check, faces, decision } = seen;
  const { verdict, gloss, pitsPerCm2, fractureMm } = checkGrade(seen, stone.material);
  const decide = (action: Action) =>
    say([{ kind: 'decision', batch: check.batch, check: check.id, stone: stone.id, action }]);
  return (
    <li className="check">
      <div className="check-faces">
        {faces.map((face) => (
          <StonePicture
            key={face.photo.id}
            face={face}
            label={words.onDay(ownWords(stone.name), check.day)}
          />
        ))}
      </div>
      <div>
        <p>
          <Rich text={words.checkLine(check.day, verdicts.stepsWithin[check.step], faces.length)} />
        </p>
        <p className="check-action" data-action={verdict.action}>
          <ActionSign action={verdict.action} /> {verdicts.actions[verdict.action]}
        </p>
        <p className="fine">
          {journal.measured({
            length: lengthWords(faces[0].stone.lengthMm),
            pits: densityNumber(pitsPerCm2),
            perArea: densityUnit(),
            fractures: lengthWords(fractureMm),
            gloss: gloss && {
              gu: plainNumber(gloss.gu60),
              low: plainNumber(gloss.gu60Low),
              high: plainNumber(gloss.gu60High),
            },
          })}
        </p>
        <div className="field-beside">
          <label htmlFor={id}>{words.decided}</label>
          <select
            id={id}
            value={decision ?? ''}
            onChange={(event) => event.target.value !== '' && decide(event.target.value as Action)}
          >
            {decision === null && <option value="">{words.notSaid}</option>}
            {ACTION_ORDER.map((action) => (
              <option key={action} value={action}>
                {verdicts.actionsWithin[action]}
              </option>
            ))}
          </select>
        </div>
      </div>
    </li>
  );
}
