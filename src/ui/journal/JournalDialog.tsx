import { useState } from 'react';
import type { RecordId } from '../../journal/records';
import { Modal } from '../parts/Modal';
import { STEP_WORDS } from '../setup/stepWords';
import { useJournal } from '../stores';
import { CheckList } from './CheckList';

/** Every batch with its checks, the newest first. */
export function JournalDialog({ onClose }: { onClose: () => void }) {
  const { status, batches, trouble } = useJournal((state) => state);
  const [open, setOpen] = useState<RecordId | null>(null);
  return (
    <Modal title="Journal" onClose={onClose}>
      {trouble !== null && <p role="alert">{trouble}</p>}
      {status === 'open' && batches.length === 0 && (
        <p>Nothing is kept yet. Measure a tray, then press Keep below its stones.</p>
      )}
      <ul className="batches">
        {batches.map(({ batch, checkCount, last }) => (
          <li key={batch.id}>
            <button
              type="button"
              className="batch"
              aria-expanded={open === batch.id}
              onClick={() => setOpen(open === batch.id ? null : batch.id)}
            >
              <strong>{batch.name}</strong>
              <span>
                {checkCount === 1 ? '1 check' : `${checkCount} checks`}
                {last !== null && `, last ${last.day} after ${STEP_WORDS[last.step]}`}
              </span>
            </button>
            {open === batch.id && <CheckList batch={batch.id} count={checkCount} />}
          </li>
        ))}
      </ul>
      <p className="fine">The journal is kept in this browser, on this device, and nowhere else.</p>
    </Modal>
  );
}
