import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { StoneHistory } from '../../history/batchHistory';
import { glossProgress } from '../../history/glossProgress';
import { stoneOutlook } from '../../history/stoneOutlook';
import { usualEndOf, usualEnds } from '../../history/usualEnds';
import { verdictNow } from '../../history/verdictNow';
import type { RecordId } from '../../journal/records';
import { saidAnew } from '../../state/saidAnew';
import { ownWords } from '../../texts/ownWords';
import { seenName } from '../../texts/seenName';
import { texts } from '../../texts/speech';
import { SaveBeforeAfter } from '../keepsake/SaveBeforeAfter';
import { Opening } from '../parts/Opening';
import { Rich } from '../parts/Rich';
import { stoneTitle } from '../parts/stoneTitle';
import { VerdictPart } from '../stone/VerdictPart';
import { useJournal } from '../stores';
import { useSpeech } from '../useSpeech';
import { BeforeAfter } from './BeforeAfter';
import { outlookNote } from './outlookNote';
import { StoneCheckRow } from './StoneCheckRow';
import { StoneForm } from './StoneForm';
import { Timeline } from './Timeline';
import { useHistory } from './useHistory';

/** A stone: what to do with it now, how it came here, and every check of it. */
export function StoneScreen({ batch, stone }: { batch: RecordId; stone: RecordId }) {
  const [share, setShare] = useState(0);
  const [, go] = useLocation();
  const history = useHistory(batch, setShare);
  if (history === undefined) return <Opening share={share} onCancel={() => go('/journal')} />;
  const found = history?.stones.find((one) => one.stone.id === stone && one.checks.length > 0);
  if (!history || !found) {
    return (
      <p className="empty">
        <Rich text={texts().journal.stone.unknown} />
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
  const speech = useSpeech();
  const { journal, verdicts } = speech.texts;
  const words = journal.stone;
  const ends = useMemo(() => usualEnds(batches), [batches]);
  const usualEnd = usualEndOf(ends, stone.material);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another language says it in other words
  const verdict = useMemo(
    () => verdictNow(checks, stone.material, usualEnd),
    [checks, stone.material, usualEnd, speech],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  const outlook = useMemo(() => stoneOutlook(checks), [checks, speech]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  const progress = useMemo(() => glossProgress(checks, stone.material), [checks, stone.material, speech]);
  const [first, last] = [checks[0]!, checks.at(-1)!];
  const late = verdict.action === 'finished' ? null : progress?.sentence;
  const notes = [outlook && outlookNote(outlook, verdict.action), late].filter(
    (note) => note && !verdict.reasons.includes(note),
  );
  return (
    <div className="journal">
      <nav className="journal-path" aria-label={words.where}>
        <Link href={`/journal/${stone.batch}`}>‹ {ownWords(seenName(batchName))}</Link>
        {next !== stone.id && <Link href={`/journal/${stone.batch}/${next}`}>{words.next}</Link>}
      </nav>
      <h2>
        {stoneTitle(stone.name)} {stone.isFavorite && <span title={words.favorite}>★</span>}
      </h2>
      <p>
        {[stone.material && verdicts.materials[stone.material], ownWords(stone.source)]
          .filter(Boolean)
          .join(', ')}
        {(stone.material !== null || stone.source !== '') && '. '}
        {words.checked(checks.length, last.check.day)}
      </p>
      <section className="verdict-now" data-action={verdict.action} aria-label={words.now}>
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
        {stone.isFavorite ? words.isFavorite : words.makeFavorite}
      </button>
      {checks.length > 1 && <BeforeAfter before={first} after={last} />}
      <SaveBeforeAfter history={history} />
      {checks.length > 1 && <Timeline checks={checks} material={stone.material} />}
      <section aria-labelledby="stone-checks">
        <h3 id="stone-checks">{words.checks}</h3>
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
