import type { StoneReport } from '../../analysis/report';
import type { Action } from '../../grading/opinion';
import { texts } from '../../texts/speech';
import { ActionLine } from '../parts/ActionLine';
import { ActionSign } from '../parts/ActionSign';
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
  const words = texts().tray;
  const word = texts().verdicts.actions[action];
  return (
    <section className="group" data-action={action} aria-label={words.groupAndCount(word, stones.length)}>
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
          aria-label={alone ? words.showAllOf(word) : words.showOnlyOf(word)}
          onClick={() => onAlone(!alone)}
        >
          {alone ? words.showAll : words.showOnly}
        </button>
      </header>
      <p className="group-errand">
        {words.errands[action]}{' '}
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
