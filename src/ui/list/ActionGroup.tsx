import type { StoneReport } from '../../analysis/report';
import type { Action } from '../../grading/opinion';
import { ACTION_MARKS } from '../../picture/actionMarks';
import { ActionLine } from '../parts/ActionLine';
import { ActionSign } from '../parts/ActionSign';
import { ACTION_ERRANDS } from './actionErrands';
import { StoneToken } from './StoneToken';

interface Props {
  readonly action: Action;
  readonly stones: readonly StoneReport[];
  readonly bitmap: ImageBitmap | null;
  /** True while the picture brings out this group and dims the others. */
  readonly alone: boolean;
  readonly onAlone: (alone: boolean) => void;
}

/** All stones of one verdict, to be picked out at the bench. */
export function ActionGroup({ action, stones, bitmap, alone, onAlone }: Props) {
  const { word } = ACTION_MARKS[action];
  return (
    <section className="group" data-action={action} aria-label={`${word}: ${stones.length}`}>
      <ActionLine action={action} />
      <header className="group-head">
        <ActionSign action={action} />
        <h3>
          {word} <span className="group-count">{stones.length}</span>
        </h3>
        <button
          type="button"
          className="button button-quiet"
          aria-pressed={alone}
          aria-label={`${alone ? 'Show all' : 'Show only these'}: ${word}`}
          onClick={() => onAlone(!alone)}
        >
          {alone ? 'Show all' : 'Show only these'}
        </button>
      </header>
      <p className="group-errand">
        {ACTION_ERRANDS[action]}{' '}
        <strong className="group-numbers">{stones.map(({ id }) => id).join(', ')}</strong>
      </p>
      <div className="tokens">
        {stones.map((stone) => (
          <StoneToken key={stone.id} stone={stone} action={action} bitmap={bitmap} />
        ))}
      </div>
    </section>
  );
}
