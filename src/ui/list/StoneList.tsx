import type { Action } from '../../grading/opinion';
import { ACTION_ORDER } from '../../picture/actionMarks';
import type { GradedPhoto } from '../../state/gradePhoto';
import { texts } from '../../texts/speech';
import { ActionGroup } from './ActionGroup';
import { SavePicture } from './SavePicture';

interface Props {
  readonly graded: GradedPhoto;
  readonly bitmap: ImageBitmap | null;
  /** Name of the photo's file. */
  readonly name: string;
  readonly only: Action | null;
  readonly onOnly: (action: Action | null) => void;
  /** Opens the picture in large print. */
  readonly onBench: () => void;
}

/** Every stone by verdict: what to pick out of the tray, group by group. */
export function StoneList({ graded, bitmap, name, only, onOnly, onBench }: Props) {
  const words = texts().tray;
  const actionOf = new Map(graded.grades.map((grade) => [grade.id, grade.verdict.action]));
  const groups = ACTION_ORDER.map((action) => ({
    action,
    stones: graded.report.stones.filter(({ id }) => actionOf.get(id) === action),
  })).filter(({ stones }) => stones.length > 0);
  return (
    <section className="list" aria-labelledby="list-title">
      <div className="list-head">
        <h2 id="list-title">{words.sortTray}</h2>
        {groups.length > 0 && (
          <button type="button" className="button" onClick={onBench}>
            {words.bench.open}
          </button>
        )}
      </div>
      {graded.contamination !== null && (
        <p className="scratch-note" role="note">
          <strong>{graded.contamination.isBatch ? words.scratchesIn.batch : words.scratchesIn.stones}</strong>{' '}
          {graded.contamination.sentence}
        </p>
      )}
      {groups.map(({ action, stones }) => (
        <ActionGroup
          key={action}
          action={action}
          stones={stones}
          bitmap={bitmap}
          alone={only === action}
          onAlone={(alone) => onOnly(alone ? action : null)}
        />
      ))}
      {bitmap !== null && groups.length > 0 && <SavePicture graded={graded} bitmap={bitmap} name={name} />}
    </section>
  );
}
