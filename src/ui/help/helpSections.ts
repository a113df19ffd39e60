/** Sections of the help page in their order; `/help/pits` leads to the one with the id `pits`. */
export const HELP_SECTIONS = [
  { id: 'flaws', title: 'Pits, fractures, chips, scratches', level: 3 },
  { id: 'pits', title: 'Pits', level: 4 },
  { id: 'fractures', title: 'Fractures', level: 4 },
  { id: 'chips', title: 'Chips', level: 4 },
  { id: 'scratches', title: 'Scratches', level: 4 },
  { id: 'pattern', title: 'Pattern that is no flaw', level: 3 },
  { id: 'finishes', title: 'Matte to mirror: the five finishes', level: 3 },
  { id: 'verdicts', title: 'What the verdicts mean', level: 3 },
  { id: 'numbers', title: 'How the numbers come about', level: 3 },
  { id: 'trust', title: 'How far to trust them', level: 3 },
  { id: 'setup', title: 'Setting up lamp and ball', level: 3 },
  { id: 'questions', title: 'Questions', level: 3 },
] as const;

export type HelpSectionId = (typeof HELP_SECTIONS)[number]['id'];

/** Id of a section's heading in the page. */
export const headingId = (id: HelpSectionId) => `help-${id}`;

/** Whether an address names a section. */
export function isHelpSection(id: string | undefined): id is HelpSectionId {
  return HELP_SECTIONS.some((section) => section.id === id);
}
