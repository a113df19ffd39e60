import type { Texts } from '../texts';

const it = (where: string | null) => where ?? 'er';

const KINDS: Readonly<Record<string, string>> = {
  array: 'eine Liste',
  boolean: 'true oder false',
  number: 'eine Zahl',
  object: 'ein Objekt',
  string: 'ein Text',
  tuple: 'eine Liste',
};
const kindOf = (kind: string) => KINDS[kind] ?? kind;

const BOUNDS = {
  'at least': 'mindestens',
  'more than': 'größer als',
  'at most': 'höchstens',
  'less than': 'kleiner als',
};

export const bundle: Texts['bundle'] = {
  refusals: {
    unreadable: 'Die Datei ließ sich nicht lesen: Kopiere sie auf dieses Gerät und öffne sie von dort.',
    'not-a-zip': 'Das ist kein Journalpaket: Wähle eine .zip-Datei, die Glintgrade gesichert hat.',
    damaged: 'Das Paket ist beschädigt: Kopiere es noch einmal von seinem Ursprung oder sichere es neu.',
    locked:
      'Das Paket ist mit einem Passwort gesperrt oder ungewöhnlich gepackt: Entpacke es und wähle das Paket so, wie es gesichert wurde.',
    'too-large': 'Das Paket ist größer, als auf einmal zu fassen ist: Sichere weniger Partien auf einmal.',
    'bad-name':
      'Im Paket liegt eine Datei unter einem Namen, den keine Sicherung vergibt: Trau ihm nicht und sichere das Journal neu.',
    'no-journal':
      'In dieser Zip-Datei ist keine journal.json: Wähle ein Paket so, wie Glintgrade es gesichert hat, kein neu gepacktes.',
    'broken-json': 'Die journal.json dieses Pakets ist nicht lesbar: Sichere das Journal neu.',
    'other-format':
      'Die journal.json dieser Zip-Datei ist kein Journal von Glintgrade: Wähle ein Paket, das Glintgrade gesichert hat.',
    newer:
      'Dieses Paket hat ein neueres Glintgrade geschrieben: Bring dieses hier auf den neuesten Stand und öffne das Paket dann noch einmal.',
    'bad-record':
      'Ein Eintrag enthält nicht, was er muss, darum wurde nichts übernommen. Hat ihn ein neueres Glintgrade geschrieben, bring dieses hier auf den neuesten Stand; sonst sichere das Journal neu.',
    'differing-records':
      'Zwei verschiedene Einträge dieses Pakets haben dieselbe Kennung, einer wurde also verändert: Sichere das Journal neu.',
    'differing-from-kept':
      'Ein Eintrag dieses Pakets ist nicht, was dieses Journal unter derselben Kennung führt. Einer von beiden wurde also verändert, und nichts wurde übernommen: Sichere das Journal dort neu, wo das Paket herkommt.',
    'bad-photo':
      'Ein Bild dieses Pakets ist nicht, was es sein muss, darum wurde nichts übernommen: Sichere das Journal neu.',
    unwritable: 'Etwas in diesem Journal enthält nicht, was es muss, darum wurde nichts geschrieben.',
  },
  parts: {
    quoted: (name) => `„${name}“`,
    about: (name) => `Es geht um ${name}.`,
    name: (name) => `Der Name ist ${name}.`,
    id: (id) => `Die Kennung ist ${id}.`,
    unpaired: (key) => `Von ${key} fehlt das Foto oder das Vorschaubild.`,
    misnamed: (name) => `${name} ist nicht nach 64 Hexadezimalziffern benannt.`,
    noJpeg: (name) => `${name} ist kein JPEG.`,
    listCutShort: 'Die Liste seiner Dateien bricht ab.',
    listBroken: 'Die Liste seiner Dateien ist beschädigt.',
    lacking: (version) => `Es wurde als Version ${version} geschrieben, und es fehlt, was zu dieser gehört.`,
    record: (number, kind, id) =>
      `Eintrag ${number}${kind === null ? '' : `, ${kind}`}${id === null ? '' : ` ${id}`}`,
    noObject: (record) => `${record}: er ist kein Objekt.`,
    unmet: (record, unmet) => `${record}: ${unmet}.`,
  },
  unmet: {
    missing: (where, kind) =>
      `${it(where)} muss da sein, und zwar als ${kindOf(kind).replace(/^eine? /, '')}`,
    otherKind: (where, kind) => `${it(where)} muss ${kindOf(kind)} sein`,
    bound: (where, bound, limit, of) => {
      const most = `${it(where)} muss ${BOUNDS[bound]} ${limit}`;
      if (of === 'letters') return `${most} Zeichen lang sein`;
      return of === 'entries' ? `${most} ${limit === '1' ? 'Eintrag' : 'Einträge'} haben` : `${most} sein`;
    },
    noDay: (where) => `${it(where)} muss ein Tag sein, den es gibt, in der Form JJJJ-MM-TT`,
    illWritten: (where) => `${it(where)} ist nicht so geschrieben, wie es sein muss`,
    unknownFields: (where, names) => `${it(where)} hat ein unbekanntes Feld, ${names}`,
    noneOf: (where, values) => `${it(where)} muss eins davon sein: ${values}`,
    unknownKind: (where) => `${it(where)} ist von keiner bekannten Art`,
    other: (where) => `${it(where)} ist nicht, was es sein muss`,
  },
  calendar: {
    title: (batch) => `Kontrolle: ${batch}`,
    note: (step, days) =>
      `${step}, gewöhnlich ${days === 1 ? '1 Tag' : `${days} Tage`}. Spül und trockne die Steine, bevor du sie fotografierst.`,
  },
};
