import { FINISH_FROM_GU60, FINISHES, type Finish } from '../../grading/finish';
import { capitalized } from '../../texts/capitalized';
import { texts } from '../../texts/speech';
import type { HelpTexts } from '../../texts/texts';
import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';
import { useHelpTexts } from './useHelpTexts';

/** Gloss units of a finish, in words. */
function rangeOf(finish: Finish, words: HelpTexts['finishes']): string {
  const [from, next] = [FINISH_FROM_GU60[finish], FINISHES[FINISHES.indexOf(finish) + 1]];
  if (next === undefined) return words.from(`${from}`);
  const to = `${FINISH_FROM_GU60[next]}`;
  return from === 0 ? words.below(to) : words.between(`${from}`, to);
}

/** The five finishes, each as a picture. */
export function FinishesHelp() {
  const { finishes, captions } = useHelpTexts();
  const names = texts().verdicts.finishes;
  return (
    <section aria-labelledby="help-finishes">
      <HelpHeading id="finishes" />
      <p>{finishes.intro}</p>
      <div className="help-pictures">
        {FINISHES.map((finish) => (
          <HelpPicture
            key={finish}
            name={finish}
            caption={finishes.caption(
              capitalized(names[finish]),
              rangeOf(finish, finishes),
              captions[finish],
            )}
          />
        ))}
      </div>
      <p>{finishes.outro}</p>
    </section>
  );
}
