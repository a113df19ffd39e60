import { useCallback, useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import type { StoneDigest } from '../../history/batchDigest';
import { useJournal } from '../stores';
import { useSpeech } from '../useSpeech';
import { type ComparePlace, CompareScreen } from './CompareScreen';
import { DigestPicture } from './DigestPicture';

/** Where the screen was left, so that coming back from a stone opens the same row. */
let left: ComparePlace | undefined;
const leave = (place: ComparePlace) => {
  left = place;
};

/** The journal's stones compared. */
export function Compare() {
  const batches = useJournal((state) => state.batches);
  const words = useSpeech().texts.page;
  const [, go] = useLocation();
  const stones = useMemo(() => batches.flatMap((batch) => batch.stones), [batches]);
  const names = useMemo(() => new Map(batches.map(({ batch, name }) => [batch, name])), [batches]);
  const openStone = useCallback((batch: string, stone: string) => go(`/journal/${batch}/${stone}`), [go]);
  const picture = useCallback((stone: StoneDigest) => <DigestPicture stone={stone} />, []);
  return (
    <div className="compare-page">
      <p>
        <Link href="/journal">‹ {words.journal}</Link>
      </p>
      <CompareScreen
        stones={stones}
        batchNames={names}
        onStone={openStone}
        picture={picture}
        place={left}
        onPlace={leave}
      />
    </div>
  );
}
