import { measurementsCsv } from '../../src/bundle/measurementsCsv';
import { nextCheck } from '../../src/bundle/nextCheck';
import { reminderCalendar } from '../../src/bundle/reminderCalendar';
import { batchDigest } from '../../src/history/batchDigest';
import { type BatchRecords, batchHistory } from '../../src/history/batchHistory';
import { batchOutlook } from '../../src/history/batchOutlook';
import { currentRecords } from '../../src/history/currentRecords';
import { usualEnds } from '../../src/history/usualEnds';
import { verdictNow } from '../../src/history/verdictNow';
import type { JournalRecord, RecordKind } from '../../src/journal/records';
import { batchPoster } from '../../src/picture/batchPoster';
import { beforeAfterCard } from '../../src/picture/beforeAfterCard';
import { cardOf } from '../../src/ui/keepsake/cardOf';
import { posterOf } from '../../src/ui/keepsake/posterOf';

type OfKind<K extends RecordKind> = Extract<JournalRecord, { kind: K }>;

/** What a journal goes out as. */
export interface Said {
  readonly drawings: readonly string[];
  readonly table: string;
  /** Null when nothing is due. */
  readonly calendar: string | null;
}

/** The records of each batch, as the journal in a browser puts them together. */
export function batchesIn(records: readonly JournalRecord[]): BatchRecords[] {
  const of = <K extends RecordKind>(kind: K) =>
    records.filter((record): record is OfKind<K> => record.kind === kind);
  const own = <T extends { readonly batch: string }>(things: readonly T[], id: string) =>
    things.filter(({ batch }) => batch === id);
  return currentRecords(of('batch')).map((batch) => ({
    ...{ batch, runs: own(of('run'), batch.id), stones: own(of('stone'), batch.id) },
    ...{ checks: own(of('check'), batch.id), identities: own(of('identity'), batch.id) },
    ...{ decisions: own(of('decision'), batch.id), withdrawals: own(of('withdrawal'), batch.id) },
  }));
}

/** Works out and writes whatever the program can say of records: digests, outlooks, verdicts, pictures, table, calendar. */
export function everythingSaid(records: readonly JournalRecord[]): Said {
  const batches = batchesIn(records);
  const digests = batches.map(batchDigest);
  const ends = usualEnds(digests);
  const histories = batches.map(batchHistory);
  const machines = currentRecords(records.filter((record) => record.kind === 'machine'));
  const drawings = histories.flatMap((history, i) => {
    batchOutlook(history);
    const poster = posterOf(history);
    const cards = history.stones.flatMap((one) => {
      const usual = ends.get(one.stone.material ?? 'agate') ?? null;
      if (one.checks.length > 0) verdictNow(one.checks, one.stone.material, usual);
      const card = cardOf(one, digests[i]!);
      return card ? [beforeAfterCard(card.card).svg] : [];
    });
    return poster ? [batchPoster(poster.poster).svg, ...cards] : cards;
  });
  const due = histories.flatMap((history) => nextCheck(history, machines) ?? []);
  const calendar = due.length === 0 ? null : reminderCalendar(due, new Date('2026-03-09T18:05:30Z'));
  return { drawings, table: measurementsCsv(histories), calendar };
}
