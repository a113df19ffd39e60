import type { BundleErrorCode } from '../../src/bundle/bundleError';
import type { CameraTrouble } from '../../src/camera/cameraTrouble';
import {
  REFUSALS,
  type RefusalCode,
  refusalSentence,
  WARNINGS,
  type WarningCode,
  warningSentence,
} from '../../src/image/notice';
import type { JournalTrouble } from '../../src/state/journalTrouble';
import { english } from '../../src/texts/english/english';

/** Troubles of the journal that have a code of their own. */
export type JournalCode = Extract<JournalTrouble, string>;

/** Every code of the program by its kind, and what must be said of each. */
export interface ByCode<T> {
  readonly refusals: Readonly<Record<RefusalCode, T>>;
  readonly warnings: Readonly<Record<WarningCode, T>>;
  readonly bundle: Readonly<Record<BundleErrorCode, T>>;
  readonly journal: Readonly<Record<JournalCode, T>>;
  readonly camera: Readonly<Record<CameraTrouble, T>>;
}

export type NoticeKind = keyof ByCode<unknown>;

const byCode = <C extends string>(codes: readonly C[], sentence: (code: C) => string) =>
  Object.fromEntries(codes.map((code) => [code, sentence(code)])) as Record<C, string>;

/** What the program says in English, by code, in the order of the code. */
export const SENTENCES: ByCode<string> = {
  refusals: byCode(REFUSALS, refusalSentence),
  warnings: byCode(WARNINGS, warningSentence),
  bundle: english.bundle.refusals,
  journal: english.journal.troubles,
  camera: english.camera.troubles,
};

export const KINDS = Object.keys(SENTENCES) as NoticeKind[];

/** Every kind with every code of it. */
export const CODES: readonly (readonly [kind: NoticeKind, code: string])[] = KINDS.flatMap((kind) =>
  Object.keys(SENTENCES[kind]).map((code) => [kind, code] as const),
);

/** What is said of a code. */
export const saidOf = <T>(table: ByCode<T>, kind: NoticeKind, code: string): T =>
  (table[kind] as Readonly<Record<string, T>>)[code]!;
