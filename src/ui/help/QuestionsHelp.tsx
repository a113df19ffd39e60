import type { HelpTexts } from '../../texts/texts';
import { Rich } from '../parts/Rich';
import { HelpHeading } from './HelpHeading';
import { useHelpTexts } from './useHelpTexts';

const ORDER: readonly (keyof HelpTexts['questions'])[] = [
  ...(['look-closer', 'no-gloss', 'not-twice', 'wet', 'sent-back', 'satin'] as const),
  ...(['one-of-two', 'no-ball', 'network'] as const),
];

/** Questions that come up at the bench. */
export function QuestionsHelp() {
  const { questions } = useHelpTexts();
  return (
    <section aria-labelledby="help-questions">
      <HelpHeading id="questions" />
      {ORDER.map((id) => (
        <div key={id} className="help-question">
          <h4>{questions[id].asked}</h4>
          <p>
            <Rich text={questions[id].answer} />
          </p>
        </div>
      ))}
    </section>
  );
}
