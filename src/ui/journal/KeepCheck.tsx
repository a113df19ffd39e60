import { type FormEvent, useId, useState } from 'react';
import type { GradedPhoto } from '../../state/gradePhoto';
import type { TrayPhoto } from '../../state/trayPhoto';
import { useJournal, useSettings } from '../stores';
import { dayToday } from './dayToday';

/** Keeps the check shown in the journal, under a batch that is there or a new one. */
export function KeepCheck({ photo, graded }: { photo: TrayPhoto; graded: GradedPhoto }) {
  const { status, batches, keptAs, trouble, keep } = useJournal((state) => state);
  const step = useSettings((state) => state.step);
  const [chosen, setChosen] = useState<string | null>(null);
  const [name, setName] = useState('');
  const [busy, setBusy] = useState(false);
  const ids = { batch: useId(), name: useId() };
  const batch = chosen ?? batches[0]?.batch.id ?? NEW;
  const isNew = batch === NEW;
  const isKept = keptAs[photo.id] !== undefined;
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    const day = dayToday();
    const called = name.trim() === '' ? `Batch of ${day}` : name.trim();
    await keep({
      photoId: photo.id,
      file: photo.file,
      graded,
      step,
      day,
      batch: isNew ? { name: called } : { id: batch },
    });
    setChosen(null);
    setName('');
    setBusy(false);
  };
  return (
    <section className="keep-check" aria-labelledby="keep-title">
      <h2 id="keep-title">Keep this check</h2>
      {isKept && (
        <p role="status">
          Kept in the journal. It stays as it is, whatever you change here; keeping it once more adds another.
        </p>
      )}
      {status === 'open' && (
        <form onSubmit={submit}>
          <div className="field">
            <label className="field-label" htmlFor={ids.batch}>
              Batch
            </label>
            <select id={ids.batch} value={batch} onChange={(event) => setChosen(event.target.value)}>
              {batches.map(({ batch: { id, name: known } }) => (
                <option key={id} value={id}>
                  {known}
                </option>
              ))}
              <option value={NEW}>A new batch</option>
            </select>
          </div>
          {isNew && (
            <div className="field">
              <label className="field-label" htmlFor={ids.name}>
                Its name
              </label>
              <input
                id={ids.name}
                type="text"
                value={name}
                maxLength={60}
                placeholder={`Batch of ${dayToday()}`}
                onChange={(event) => setName(event.target.value)}
              />
            </div>
          )}
          <button type="submit" className="button button-strong" disabled={busy}>
            {busy ? 'Keeping…' : isKept ? 'Keep it once more' : 'Keep'}
          </button>
        </form>
      )}
      {trouble !== null && <p role="alert">{trouble}</p>}
    </section>
  );
}

const NEW = 'new';
