import type { Action } from '../../grading/opinion';
import { ACTION_MARKS, ACTION_ORDER } from '../../picture/actionMarks';
import { ActionLine } from '../parts/ActionLine';
import { ActionSign } from '../parts/ActionSign';
import { HelpHeading } from './HelpHeading';

const MEANINGS: Readonly<Record<Action, string>> = {
  finished: 'Done. Its gloss is near what its material can reach, and no flaw is over your limits.',
  advance: 'Ready for the next step. It is smooth enough, and no flaw is over your limits.',
  repeat: 'The same step once more. The reason says what is missing.',
  'back-to-coarse': 'A flaw this step cannot take out. It would carry grit into the finer steps.',
  'set-aside':
    'Grinding on will not help: a long fracture, or too small. Saw it, break it, or keep it as it is.',
  'look-closer': 'The photo cannot tell. Take the stone in your hand, and a loupe.',
};

const LINES: Readonly<Record<Action, string>> = {
  finished: 'a double line and a glint',
  advance: 'an unbroken line and a stair',
  repeat: 'dashes and a spiral',
  'back-to-coarse': 'beads and two rough edges',
  'set-aside': 'dash and dot, and a stone on a shelf',
  'look-closer': 'short dashes far apart, and a loupe',
};

/** The six verdicts with sign and line. */
export function VerdictsHelp() {
  return (
    <section aria-labelledby="help-verdicts">
      <HelpHeading id="verdicts" />
      <p>
        Every stone is outlined in the line of its verdict and carries its sign. You need no color to read it.
      </p>
      <ul className="help-verdicts">
        {ACTION_ORDER.map((action) => (
          <li key={action} data-action={action}>
            <p className="help-verdict-name">
              <ActionSign action={action} />
              <strong>{ACTION_MARKS[action].word}</strong>
              <span className="fine">{LINES[action]}</span>
            </p>
            <ActionLine action={action} />
            <p>{MEANINGS[action]}</p>
          </li>
        ))}
      </ul>
      <p>
        In doubt a stone is never advanced. One bad stone spoils a batch; one more week costs a week. The
        limits are yours: set them under <em>Setup</em>.
      </p>
    </section>
  );
}
