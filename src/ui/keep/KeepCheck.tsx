import { type FormEvent, useState } from 'react';
import { Link } from 'wouter';
import type { Proposal } from '../../history/proposeStones';
import type { RecordId } from '../../journal/records';
import { dayToday } from '../../state/dayToday';
import type { GradedPhoto } from '../../state/gradePhoto';
import { troubleWords } from '../../state/journalTrouble';
import type { CheckToKeep, NamedPlace } from '../../state/keepCheck';
import type { TrayPhoto } from '../../state/trayPhoto';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { useHistory } from '../journal/useHistory';
import { BatchNextStep } from '../plan/BatchNextStep';
import { useJournal, useRun, useSettings, useUndo } from '../stores';
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
  const { status, keptAs, trouble, unkeep } = useJournal((state) => state);
  const { propose, keep } = useKeeping();
  const { done } = useUndo();
  const { step, material, limits } = useSettings((state) => state);
  const words = texts().keep;
  const [chosen, choose] = useChosenBatch(step);
  const [busy, setBusy] = useState(false);
  const [asked, setAsked] = useState<readonly Proposal[] | null>(null);
  const { batch, faceOf } = chosen;
  const kept = keptAs[photo.id];

  const keepAs = async (stones: readonly NamedPlace[]) => {
    setAsked(null);
    const where = batch === null ? { name: nameOf(chosen) } : { id: batch };
    const setting = { file: photo.file, graded, step, material, limits, day: dayToday(), faceOf };
    if (await keep(photo.id, { ...setting, batch: where, stones })) {
      choose(null);
      done({ said: () => texts().keep.keptUndo(ownWords(photo.name)), undo: () => void unkeep(photo.id) });
    }
    setBusy(false);
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    const proposals = await propose(graded, batch, faceOf);
    // Null when the journal could not be read, undefined when it was cancelled.
    if (proposals == null) setBusy(false);
    else if (proposals.some(({ isUnsure }) => isUnsure)) setAsked(proposals);
    else await keepAs(proposals);
  };

  return (
    <section className="keep-check" aria-labelledby="keep-title">
      <h2 id="keep-title">{words.title}</h2>
      {kept !== undefined && <KeptLine batch={kept.batch} />}
      {kept !== undefined && <NextOfBatch batch={kept.batch} />}
      {status === 'open' && (
        <form onSubmit={submit}>
          <BatchChoice chosen={chosen} onChoose={choose} />
          <button type="submit" className="button button-strong" disabled={busy}>
            {busy ? words.keeping : kept !== undefined ? words.again : words.keep}
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
      {trouble !== null && <p role="alert">{troubleWords(trouble)}</p>}
    </section>
  );
}

/** Proposing and keeping, each with its progress and a way to cancel it. */
function useKeeping() {
  const { propose, keep } = useJournal((state) => state);
  const run = useRun();
  return {
    propose: (graded: GradedPhoto, batch: RecordId | null, faceOf: RecordId | null) =>
      run(
        () => texts().work.comparing,
        (watch) => propose(graded, batch, faceOf, watch),
      ),
    keep: (photoId: number, check: CheckToKeep) =>
      run(
        () => texts().keep.keeping,
        (watch) => keep(photoId, check, watch),
      ),
  };
}

const nameOf = ({ name }: ChosenBatch) =>
  name.trim() === '' ? texts().keep.batchOf(dayToday()) : name.trim();

function KeptLine({ batch }: { batch: RecordId }) {
  const { before, after, itsBatch } = texts().keep.kept;
  const name = useJournal((state) => state.batches.find((one) => one.batch === batch)?.name);
  return (
    <p role="status">
      {before}
      <Link href={`/journal/${batch}`}>{name ?? itsBatch}</Link>
      {after}
    </p>
  );
}

function NextOfBatch({ batch }: { batch: RecordId }) {
  const history = useHistory(batch);
  return history ? <BatchNextStep history={history} /> : null;
}
