import { type ChangeEvent, useId } from 'react';
import { calendarOf, csvOf, type TakenIn } from '../../state/journalExchange';
import { texts } from '../../texts/speech';
import { saveFile } from '../parts/saveFile';
import { useJournal, useSettings } from '../stores';
import { useSaid } from './useSaid';
import { nameOfFile, useSaveJournal } from './useSaveJournal';

const ours = () => texts().journal.inAndOut;

/** The files that a journal goes out and comes in as. */
function useFiles(attempt: ReturnType<typeof useSaid>['attempt']) {
  const { batches, machines, opened, takeIn } = useJournal((state) => state);
  const { savedUpTo, change } = useSettings((state) => state);
  const csv = () =>
    attempt(
      () => texts().work.savingTable,
      async (watch) => {
        saveFile(await csvOf(await opened, watch), nameOfFile('csv'));
        return null;
      },
    );
  const calendar = () =>
    attempt(
      () => texts().work.savingReminders,
      async (watch) => {
        const open = batches.filter(({ isOver }) => !isOver).map(({ batch }) => batch);
        const file = await calendarOf(await opened, open, machines, watch);
        if (file === null) return () => ours().nothingDue;
        saveFile(file, nameOfFile('ics'));
        return () => ours().remindersSaved;
      },
    );
  const take = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (!file) return;
    await attempt(
      () => texts().work.takingIn,
      async (watch) => {
        const journal = await opened;
        const isSaved = (await journal.checkIds()).every((id) => savedUpTo !== null && id <= savedUpTo);
        const brought = await takeIn(file, watch);
        // What came out of a file still lies in it.
        if (isSaved && brought) change({ savedUpTo: (await journal.recordIds()).at(-1) ?? null });
        return broughtWords(brought);
      },
      () => texts().work.notTakenIn,
    );
    // The same file can be chosen again.
    target.value = '';
  };
  return { csv, calendar, take };
}

/** Carries the journal out of this browser and into it. */
export function InAndOut() {
  const isEmpty = useJournal((state) => state.batches.length === 0);
  const { said, busy, attempt } = useSaid();
  const bundle = useSaveJournal(attempt);
  const { csv, calendar, take } = useFiles(attempt);
  const id = useId();
  const words = ours();
  return (
    <section className="in-and-out" aria-labelledby="in-and-out-title">
      <h3 id="in-and-out-title">{words.title}</h3>
      <div className="in-and-out-buttons">
        <button type="button" className="button" disabled={busy || isEmpty} onClick={bundle}>
          {words.save}
        </button>
        <label className="button" htmlFor={id}>
          {words.takeIn}
          <input id={id} type="file" accept=".zip,application/zip" disabled={busy} onChange={take} />
        </label>
        <button type="button" className="button" disabled={busy || isEmpty} onClick={csv}>
          {words.table}
        </button>
        <button type="button" className="button" disabled={busy || isEmpty} onClick={calendar}>
          {words.reminders}
        </button>
      </div>
      {said !== null && <p role="status">{said()}</p>}
    </section>
  );
}

/** Null where the journal's own trouble says it. */
function broughtWords(brought: TakenIn | null): (() => string) | null {
  if (brought === null) return null;
  const { fresh, records } = brought;
  return () => (fresh === 0 ? ours().allHere : ours().brought(fresh, records));
}
