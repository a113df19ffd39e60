import { type ChangeEvent, useId, useState } from 'react';
import { bundleOf, calendarOf, csvOf } from '../../state/journalExchange';
import { saveFile } from '../parts/saveFile';
import { useJournal } from '../stores';
import { dayToday } from './dayToday';

/** Carries the journal out of this browser and into it. */
export function InAndOut() {
  const { batches, machines, opened, takeIn } = useJournal((state) => state);
  const [said, setSaid] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const id = useId();
  const attempt = async (work: () => Promise<string | null>) => {
    setBusy(true);
    setSaid(null);
    try {
      setSaid(await work());
    } catch (error) {
      setSaid(error instanceof Error ? error.message : String(error));
    }
    setBusy(false);
  };
  const name = (ending: string) => `glintgrade-${dayToday()}.${ending}`;
  const bundle = () =>
    attempt(async () => {
      saveFile(await bundleOf(await opened), name('zip'));
      return 'Saved: records and photos in one file. Another device takes it in here.';
    });
  const csv = () =>
    attempt(async () => {
      saveFile(await csvOf(await opened), name('csv'));
      return null;
    });
  const calendar = () =>
    attempt(async () => {
      const open = batches.filter(({ isOver }) => !isOver).map(({ batch }) => batch);
      const file = await calendarOf(await opened, open, machines);
      if (file === null) return 'Nothing is due: no batch under way has a check or a run yet.';
      saveFile(file, name('ics'));
      return 'Saved: your calendar takes it in. A newer one replaces it there.';
    });
  const take = ({ target }: ChangeEvent<HTMLInputElement>) =>
    attempt(async () => {
      const file = target.files?.[0];
      if (!file) return null;
      const brought = await takeIn(file);
      target.value = '';
      if (brought === null) return null;
      return brought.fresh === 0
        ? 'All of it was here already.'
        : `${brought.fresh} of ${brought.records} records are new; nothing that was here was changed.`;
    });
  return (
    <section className="in-and-out" aria-labelledby="in-and-out-title">
      <h3 id="in-and-out-title">In and out</h3>
      <div className="in-and-out-buttons">
        <button type="button" className="button" disabled={busy || batches.length === 0} onClick={bundle}>
          Save the journal
        </button>
        <label className="button" htmlFor={id}>
          Take in a journal
          <input id={id} type="file" accept=".zip,application/zip" disabled={busy} onChange={take} />
        </label>
        <button type="button" className="button" disabled={busy || batches.length === 0} onClick={csv}>
          Save a table
        </button>
        <button type="button" className="button" disabled={busy || batches.length === 0} onClick={calendar}>
          Save reminders
        </button>
      </div>
      {said !== null && <p role="status">{said}</p>}
    </section>
  );
}
