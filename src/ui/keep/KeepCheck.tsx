import { type FormEvent, useState } from 'react';
import { Link } from 'wouter';
import type { Proposal } from '../../history/proposeStones';
import type { RecordId } from '../../journal/records';
import type { GradedPhoto } from '../../state/gradePhoto';
import type { NamedPlace } from '../../state/keepCheck';
import type { TrayPhoto } from '../../state/trayPhoto';
import { dayToday } from '../journal/dayToday';
import { useHistory } from '../journal/useHistory';
import { BatchNextStep } from '../plan/BatchNextStep';
import { useJournal, useSettings } from '../stores';
import { BatchChoice, type ChosenBatch, useChosenBatch } from './BatchChoice';
import { PhotoStone } from './PhotoStone';
import { WhichStones } from './WhichStones';

interface Props {
  readonly photo: TrayPhoto;
  readonly graded: GradedPhoto;
  readonly bitmap: ImageBitmap | null;
}

/** Keeps the check shown in the journal: says which batch, is asked which stone is which where that is not sure. */
export function KeepCheck({ photo, graded, bitmap }: Props) {
  const { status, keptAs, trouble, propose, keep } = useJournal((state) => state);
  const { step, material, limits } = useSettings((state) => state);
  const [chosen, choose] = useChosenBatch(step);
  const [busy, setBusy] = useState(false);
  const [asked, setAsked] = useState<readonly Proposal[] | null>(null);
  const { batch, faceOf } = chosen;
  const kept = keptAs[photo.id];

  const keepAs = async (stones: readonly NamedPlace[]) => {
    setAsked(null);
    const where = batch === null ? { name: nameOf(chosen) } : { id: batch };
    const setting = { file: photo.file, graded, step, material, limits, day: dayToday(), faceOf };
    if (await keep(photo.id, { ...setting, batch: where, stones })) choose(null);
    setBusy(false);
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    const proposals = await propose(graded, batch, faceOf);
    if (proposals === null) setBusy(false);
    else if (proposals.some(({ isUnsure }) => isUnsure)) setAsked(proposals);
    else await keepAs(proposals);
  };

  return (
    <section className="keep-check" aria-labelledby="keep-title">
      <h2 id="keep-title">Keep this check</h2>
      {kept !== undefined && <KeptLine batch={kept.batch} />}
      {kept !== undefined && <NextOfBatch batch={kept.batch} />}
      {status === 'open' && (
        <form onSubmit={submit}>
          <BatchChoice chosen={chosen} onChoose={choose} />
          <button type="submit" className="button button-strong" disabled={busy}>
            {busy ? 'Keeping…' : kept !== undefined ? 'Keep it once more' : 'Keep'}
          </button>
        </form>
      )}
      {asked !== null && batch !== null && (
        <WhichStones
          batch={batch}
          proposals={asked}
          picture={(place) => {
            const stone = graded.report.stones.find(({ id }) => id === place);
            return stone && <PhotoStone stone={stone} bitmap={bitmap} />;
          }}
          onDone={keepAs}
          onClose={() => {
            setAsked(null);
            setBusy(false);
          }}
        />
      )}
      {trouble !== null && <p role="alert">{trouble}</p>}
    </section>
  );
}

const nameOf = ({ name }: ChosenBatch) => (name.trim() === '' ? `Batch of ${dayToday()}` : name.trim());

function KeptLine({ batch }: { batch: RecordId }) {
  const name = useJournal((state) => state.batches.find((one) => one.batch === batch)?.name);
  return (
    <p role="status">
      Kept in the journal under <Link href={`/journal/${batch}`}>{name ?? 'its batch'}</Link>. It stays as it
      is, whatever you change here.
    </p>
  );
}

function NextOfBatch({ batch }: { batch: RecordId }) {
  const history = useHistory(batch);
  return history ? <BatchNextStep history={history} /> : null;
}
