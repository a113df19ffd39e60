import { ACTION_ORDER } from '../../picture/actionMarks';
import { texts } from '../../texts/speech';
import { ActionLine } from '../parts/ActionLine';
import { ActionSign } from '../parts/ActionSign';
import { Rich } from '../parts/Rich';
import { HelpHeading } from './HelpHeading';
import { useHelpTexts } from './useHelpTexts';

/** The six verdicts with sign and line. */
export function VerdictsHelp() {
  const { verdicts } = useHelpTexts();
  const names = texts().verdicts.actions;
  return (
    <section aria-labelledby="help-verdicts">
      <HelpHeading id="verdicts" />
      <p>{verdicts.intro}</p>
      <ul className="help-verdicts">
        {ACTION_ORDER.map((action) => (
          <li key={action} data-action={action}>
            <p className="help-verdict-name">
              <ActionSign action={action} />
              <strong>{names[action]}</strong>
              <span className="fine">{verdicts.lines[action]}</span>
            </p>
            <ActionLine action={action} />
            <p>{verdicts.meanings[action]}</p>
          </li>
        ))}
      </ul>
      <p>
        <Rich text={verdicts.outro} />
      </p>
    </section>
  );
}
