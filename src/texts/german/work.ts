import type { Texts } from '../texts';

/** Was eine Weile dauert und gerade läuft. */
export const work: Texts['work'] = {
  cancel: 'Abbrechen',
  stopping: 'Hält an …',
  soFar: 'Bisher geschafft',
  savingJournal: 'Das Journal wird gepackt …',
  takingIn: 'Das Journal wird übernommen …',
  savingTable: 'Die Tabelle wird geschrieben …',
  savingReminders: 'Die Erinnerungen werden zusammengestellt …',
  openingExample: 'Das Beispieljahr wird geöffnet …',
  comparing: 'Die Steine werden mit denen der Partie verglichen …',
  notSaved: 'Abgebrochen: Nichts wurde gesichert.',
  notTakenIn: 'Abgebrochen: Nichts wurde übernommen.',
};
