import { texts } from '../texts/speech';
import type { Texts } from '../texts/texts';

/** Every reason for which a bundle is not taken in, or not written. */
export type BundleErrorCode = keyof Texts['bundle']['refusals'];

/** Says which part of a bundle it is about, as a sentence of its own in the language spoken when it is asked. */
export type BundlePart = (parts: Texts['bundle']['parts']) => string;

/** Longest that is told of what a stranger's file says. */
const MOST_LETTERS = 300;

/** A bundle that cannot be read or written; `message` is shown to the person as it is. */
export class BundleError extends Error {
  readonly code: BundleErrorCode;
  /** Which part it is about; left out when the code says all. */
  readonly part: BundlePart | undefined;

  constructor(code: BundleErrorCode, part?: BundlePart) {
    super();
    this.name = 'BundleError';
    this.code = code;
    this.part = part;
  }

  /** What is wrong and what to do, in the language spoken when it is read. */
  override get message(): string {
    const { refusals, parts } = texts().bundle;
    const said = this.part?.(parts) ?? '';
    const cut = said.length > MOST_LETTERS ? `${said.slice(0, MOST_LETTERS)}…` : said;
    return cut === '' ? refusals[this.code] : `${refusals[this.code]} ${cut}`;
  }
}

/** A name out of a file, fit to be shown: short, and without letters that cannot be seen. */
export function shown(name: string): string {
  const plain = name.replace(/[\p{C}\p{Z}]/gu, ' ');
  return texts().bundle.parts.quoted(plain.length > 80 ? `${plain.slice(0, 80)}…` : plain);
}
