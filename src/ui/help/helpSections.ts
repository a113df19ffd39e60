import type { HelpTexts } from '../../texts/texts';

export type HelpSectionId = keyof HelpTexts['sections'];

/** Sections of the help page in their order; `/help/pits` leads to the one with the id `pits`. */
export const HELP_SECTIONS: readonly { readonly id: HelpSectionId; readonly level: 3 | 4 }[] = [
  { id: 'flaws', level: 3 },
  { id: 'pits', level: 4 },
  { id: 'fractures', level: 4 },
  { id: 'chips', level: 4 },
  { id: 'scratches', level: 4 },
  { id: 'pattern', level: 3 },
  { id: 'finishes', level: 3 },
  { id: 'verdicts', level: 3 },
  { id: 'numbers', level: 3 },
  { id: 'trust', level: 3 },
  { id: 'setup', level: 3 },
  { id: 'questions', level: 3 },
];

/** Id of a section's heading in the page. */
export const headingId = (id: HelpSectionId) => `help-${id}`;

/** Whether an address names a section. */
export function isHelpSection(id: string | undefined): id is HelpSectionId {
  return HELP_SECTIONS.some((section) => section.id === id);
}
