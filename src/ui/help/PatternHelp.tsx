import { Rich } from '../parts/Rich';
import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';
import { useHelpTexts } from './useHelpTexts';

const PATTERNS = ['specks', 'grains', 'bands', 'orbs', 'moss'] as const;
const LAMPS = ['lamp-here', 'lamp-there'] as const;

/** What looks like a flaw and is none, and how to tell. */
export function PatternHelp() {
  const { pattern, captions } = useHelpTexts();
  return (
    <section aria-labelledby="help-pattern">
      <HelpHeading id="pattern" />
      <p>{pattern.intro}</p>
      <div className="help-pictures">
        {PATTERNS.map((name) => (
          <HelpPicture key={name} name={name} caption={captions[name]} />
        ))}
      </div>
      <h4>{pattern.moveLamp}</h4>
      <p>
        <Rich text={pattern.how} />
      </p>
      <div className="help-pictures">
        {LAMPS.map((name) => (
          <HelpPicture key={name} name={name} caption={captions[name]} />
        ))}
      </div>
    </section>
  );
}
