import { type HostileCase, hostile, journalFile, KEY, withFiles } from './hostileCase';
import { rawZip } from './rawZip';

const named = (name: string) => () => withFiles({ name, content: 'x' });
const journalNamed = (name: string) => () => rawZip([{ ...journalFile(), name }]);

/** Files under names that lead elsewhere or look like another's. */
export const NAMES: readonly HostileCase[] = [
  hostile('a name one folder up', 'bad-name', named('../a.jpg')),
  hostile('a name many folders up', 'bad-name', named('../../../../etc/passwd')),
  hostile('a name that leads up from inside', 'bad-name', named('photos/../../b'), named('photos/..')),
  hostile('two points for a name', 'bad-name', named('..')),
  hostile('an absolute name', 'bad-name', named('/etc/passwd'), named('//server/share')),
  hostile('backslashes in a name', 'bad-name', named('..\\a.jpg'), named('\\\\server\\share'), named('a\\b')),
  hostile('a drive in a name', 'bad-name', named('C:/a.jpg'), named('c:a.jpg')),
  hostile('NUL in a name', 'bad-name', named(`photos/${KEY}.jpg\0.exe`), named('\0')),
  hostile(
    'line breaks, tabs and other control characters in a name',
    'bad-name',
    named('a\nb'),
    named('a\tb'),
    named('a\u0085b'),
  ),
  hostile('an empty name', 'bad-name', named('')),
  hostile('the same name twice, with the same content', 'bad-name', () => withFiles(journalFile())),
  hostile('the same name twice, with different content', 'bad-name', () => withFiles(journalFile('{}'))),
  hostile(
    'letters that look like points and slashes',
    null,
    named('．．／a'),
    named('..∕..∕a'),
    named('‥/a'),
  ),
  hostile(
    'percent signs, a home folder, a device, a scheme',
    null,
    named('%2e%2e%2fa'),
    named('~/.profile'),
    named('CON'),
    named('file:///a'),
  ),
  hostile('a name in overlong UTF-8', null, () =>
    withFiles({ name: Uint8Array.of(0xc0, 0xae, 0xc0, 0xae, 0x2f, 0x61), content: 'x' }),
  ),
  hostile(
    'names of right-to-left and zero-width letters',
    null,
    named('gpj.\u202eotohp'),
    named('\u200b'),
    named('\u2067a'),
  ),
  hostile('a name as long as can be', null, named('a'.repeat(65_535))),
  hostile(
    'the journal under a name that looks the same',
    'no-journal',
    journalNamed('jоurnal.json'),
    journalNamed('journal\u200b.json'),
    journalNamed('journal.json '),
  ),
  hostile(
    'the journal under a name with a byte order mark',
    'no-journal',
    journalNamed('\ufeffjournal.json'),
  ),
  hostile(
    'the journal in capitals, in a folder, as a folder',
    'no-journal',
    journalNamed('JOURNAL.JSON'),
    journalNamed('./journal.json'),
    journalNamed('journal.json/'),
  ),
];
