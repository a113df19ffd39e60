import { REFUSALS, WARNINGS } from '../../src/image/notice';
import type { ByCode } from './noticeCodes';

/** A test that provokes a code: its file, and its title as it stands there. */
export interface Provoking {
  readonly file: string;
  readonly title: string;
}

const all = <C extends string>(codes: readonly C[], test: Provoking) =>
  Object.fromEntries(codes.map((code) => [code, test])) as Record<C, Provoking>;
const inReading = (title: string): Provoking => ({ file: 'tests/bundle/readBundle.test.ts', title });
const inJournal = (title: string): Provoking => ({
  file: 'tests/browser/journalTroubles.browser.test.ts',
  title,
});
const inCamera = (title: string): Provoking => ({
  file: 'tests/browser/cameraTroubles.served.test.ts',
  title,
});
const inPhotos = (title: string): Provoking => ({ file: 'tests/analysis/photoNotices.test.ts', title });
const TABLE = inReading('refuses a zip with $what');
const CLAIMS = inReading('refuses by what the directory claims, before anything is unpacked');
const ANSWERED = inCamera('%s: the browser answers %s');

/** For each code one test of those that provoke it; a code without one does not compile. */
export const PROVOKED_BY: ByCode<Provoking> = {
  refusals: all(REFUSALS, inPhotos('refuses a sample photo, or a file, altered so that it must be: %s')),
  warnings: all(WARNINGS, inPhotos('warns of a sample photo altered, or used, so that it must: %s')),
  bundle: {
    unreadable: inReading('refuses a file that can no longer be read'),
    'not-a-zip': inReading('refuses what is no zip'),
    damaged: inReading('refuses a file that unpacks to more or less than it claims, or to something else'),
    locked: CLAIMS,
    'too-large': CLAIMS,
    'bad-name': TABLE,
    'no-journal': TABLE,
    'broken-json': TABLE,
    'other-format': TABLE,
    newer: TABLE,
    'bad-record': TABLE,
    'differing-records': TABLE,
    'differing-from-kept': {
      file: 'tests/browser/hostileBundles.browser.test.ts',
      title: 'refuses whole, in both languages, a bundle whose record is not what is kept under its id',
    },
    'bad-photo': TABLE,
    unwritable: inReading('writes nothing that it would not read'),
  },
  journal: {
    refused: inJournal('refused: the browser does not open the journal'),
    unreadable: inJournal('unreadable: the journal is closed while it is read'),
    outdated: inJournal('outdated: another page has brought the journal up to date'),
    full: {
      file: 'tests/browser/fullStorage.browser.test.ts',
      title: '%s: nothing fits, which is said, and nothing is lost',
    },
  },
  camera: {
    denied: inCamera('denied: the browser lets no page use the camera'),
    'no-camera': inCamera('no-camera: the device has none'),
    'in-use': ANSWERED,
    'not-offered': inCamera('not-offered: the browser gives pages no camera'),
    lost: inCamera('lost: the camera ends while its picture is shown'),
    broken: ANSWERED,
  },
};
