import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { FinishesHelp } from './FinishesHelp';
import { FlawsHelp } from './FlawsHelp';
import { HELP_SECTIONS, headingId, isHelpSection } from './helpSections';
import { NumbersHelp } from './NumbersHelp';
import { PatternHelp } from './PatternHelp';
import { QuestionsHelp } from './QuestionsHelp';
import { SetupHelp } from './SetupHelp';
import { TrustHelp } from './TrustHelp';
import { useHelpTexts } from './useHelpTexts';
import { VerdictsHelp } from './VerdictsHelp';

interface Props {
  /** The section its address names; the page's top without one, and with one that is not there. */
  readonly section?: string | undefined;
}

/** Everything explained, with our own pictures. */
export function HelpScreen({ section }: Props) {
  const { page, sections } = useHelpTexts();
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!isHelpSection(section)) return;
    const heading = ref.current?.querySelector<HTMLElement>(`#${headingId(section)}`);
    heading?.scrollIntoView({ block: 'start' });
    // The keyboard goes on from there.
    heading?.focus({ preventScroll: true });
  }, [section]);
  return (
    <div className="journal help" ref={ref}>
      <header className="help-head">
        <h2>{page.title}</h2>
        <p>{page.about}</p>
      </header>
      <nav className="help-contents" aria-label={page.contents}>
        <ol>
          {HELP_SECTIONS.map(({ id, level }) => (
            <li key={id} data-level={level}>
              <Link href={`/help/${id}`} aria-current={id === section ? 'location' : undefined}>
                {sections[id]}
              </Link>
            </li>
          ))}
        </ol>
      </nav>
      <div className="help-body">
        <FlawsHelp />
        <PatternHelp />
        <FinishesHelp />
        <VerdictsHelp />
        <NumbersHelp />
        <TrustHelp />
        <SetupHelp />
        <QuestionsHelp />
      </div>
    </div>
  );
}
