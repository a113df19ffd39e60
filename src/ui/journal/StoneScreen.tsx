import { useMemo } from 'react';
import { Link } from 'wouter';
import type { StoneHistory } from '../../history/batchHistory';
import { glossProgress } from '../../history/glossProgress';
import { stoneOutlook } from '../../history/stoneOutlook';
import { usualEndOf, usualEnds } from '../../history/usualEnds';
import { verdictNow } from '../../history/verdictNow';
import type { RecordId } from '../../journal/records';
import { saidAnew } from '../../state/saidAnew';
import { SaveBeforeAfter } from '../keepsake/SaveBeforeAfter';
import { stoneTitle } from '../parts/stoneTitle';
import { VerdictPart } from '../stone/VerdictPart';
import { useJournal } from '../stores';
import { BeforeAfter } from './BeforeAfter';
import { outlookNote } from './outlookNote';
import { StoneCheckRow } from './StoneCheckRow';
import { StoneForm } from './StoneForm';
import { Timeline } from './Timeline';
import { useHistory } from './useHistory';

/** A stone: what to do with it now, how it came here, and every check of it. */
export function StoneScreen({ batch, stone }: { batch: RecordId; stone: RecordId }) {
  const history = useHistory(batch);
  if (history === undefined) return <p className="empty">Opening…</p>;
  const found = history?.stones.find((one) => one.stone.id === stone && one.checks.length > 0);
  if (!history || !found) {
    return (
      <p className="empty">
        This stone is not in the journal of this browser. <Link href="/journal">All batches</Link>
      </p>
    );
  }
  const place = history.stones.filter(({ checks }) => checks.length > 0);
  const next = place[(place.indexOf(found) + 1) % place.length]!;
  return <Stone key={stone} history={found} batchName={history.batch.name} next={next.stone.id} />;
}

interface Props {
  readonly history: StoneHistory;
  readonly batchName: string;
  readonly next: RecordId;
}

function Stone({ history, batchName, next }: Props) {
  const { batches, say } = useJournal((state) => state);
  const { stone, checks } = history;
  const ends = useMemo(() => usualEnds(batches), [batches]);
  const usualEnd = usualEndOf(ends, stone.material);
  const verdict = useMemo(
    () => verdictNow(checks, stone.material, usualEnd),
    [checks, stone.material, usualEnd],
  );
  const outlook = useMemo(() => stoneOutlook(checks), [checks]);
  const progress = useMemo(() => glossProgress(checks, stone.material), [checks, stone.material]);
  const [first, last] = [checks[0]!, checks.at(-1)!];
  const late = verdict.action === 'finished' ? null : progress?.sentence;
  const notes = [outlook && outlookNote(outlook, verdict.action), late].filter(
    (note) => note && !verdict.reasons.includes(note),
  );
  return (
    <div className="journal">
      <nav className="journal-path" aria-label="Where this stone is">
        <Link href={`/journal/${stone.batch}`}>‹ {batchName}</Link>
        {next !== stone.id && <Link href={`/journal/${stone.batch}/${next}`}>Next stone ›</Link>}
      </nav>
      <h2>
        {stoneTitle(stone.name)} {stone.isFavorite && <span title="favorite">★</span>}
      </h2>
      <p>
        {[stone.material, stone.source].filter(Boolean).join(', ')}
        {(stone.material !== null || stone.source !== '') && '. '}
        {checks.length === 1 ? 'One check' : `${checks.length} checks`}, the last on {last.check.day}.
      </p>
      <section className="verdict-now" data-action={verdict.action} aria-label="What to do now">
        <VerdictPart verdict={verdict} />
        {notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </section>
      <button
        type="button"
        className="button"
        aria-pressed={stone.isFavorite}
        onClick={() => say([saidAnew(stone, { isFavorite: !stone.isFavorite })])}
      >
        {stone.isFavorite ? '★ Favorite' : '☆ Make it a favorite'}
      </button>
      {checks.length > 1 && <BeforeAfter before={first} after={last} />}
      <SaveBeforeAfter history={history} />
      {checks.length > 1 && <Timeline checks={checks} material={stone.material} />}
      <section aria-labelledby="stone-checks">
        <h3 id="stone-checks">Checks</h3>
        <ol className="checks">
          {checks.toReversed().map((seen) => (
            <StoneCheckRow key={seen.check.id} seen={seen} stone={stone} />
          ))}
        </ol>
      </section>
      <StoneForm
        key={`${stone.name} ${stone.material} ${stone.source}`}
        stone={stone}
        onSay={(change) => say([saidAnew(stone, change)])}
      />
    </div>
  );
}
