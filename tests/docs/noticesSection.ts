import { KINDS, type NoticeKind, SENTENCES, saidOf } from './noticeCodes';
import { WHEN_SAID } from './whenSaid';

/** Between these two lines of DEVELOPERS.md everything is written by `npm run docs:notices`. */
const [BEGIN, END] = ['<!-- notices: written by `npm run docs:notices` -->', '<!-- /notices -->'];

const TITLES: Readonly<Record<NoticeKind, string>> = {
  refusals: 'Refusals of a photo (`src/image/notice.ts`)',
  warnings: 'Warnings about a photo (`src/image/notice.ts`)',
  bundle: 'Refusals of a bundle (`src/bundle/bundleError.ts`); most say behind it which part they are about',
  journal: 'Troubles with the journal (`src/state/journalTrouble.ts`)',
  camera: 'Troubles with the camera (`src/camera/cameraTrouble.ts`)',
};

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

function tableOf(kind: NoticeKind): string {
  const rows = Object.entries(SENTENCES[kind]).map(
    ([code, sentence]) => `| \`${code}\` | ${cell(saidOf(WHEN_SAID, kind, code))} | ${cell(sentence)} |`,
  );
  return [`**${TITLES[kind]}**`, '', '| code | when | what it says |', '|---|---|---|', ...rows].join('\n');
}

/**
 * The text with the section of refusals and warnings made anew.
 *
 * @param text - Of DEVELOPERS.md.
 * @throws Error where its two marks are missing or not in order.
 */
export function withNotices(text: string): string {
  const [begin, end] = [text.indexOf(BEGIN), text.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`DEVELOPERS.md lacks the lines ${BEGIN} and ${END}.`);
  const section = KINDS.map(tableOf).join('\n\n');
  return `${text.slice(0, begin)}${BEGIN}\n\n${section}\n\n${text.slice(end)}`;
}
