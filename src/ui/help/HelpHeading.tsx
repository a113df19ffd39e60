import { HELP_SECTIONS, type HelpSectionId, headingId } from './helpSections';
import { useHelpTexts } from './useHelpTexts';

/** A section's heading, which its address leads to. */
export function HelpHeading({ id }: { id: HelpSectionId }) {
  const { sections } = useHelpTexts();
  const section = HELP_SECTIONS.find((one) => one.id === id)!;
  const Heading = section.level === 3 ? 'h3' : 'h4';
  return (
    <Heading id={headingId(id)} tabIndex={-1}>
      {sections[id]}
    </Heading>
  );
}
