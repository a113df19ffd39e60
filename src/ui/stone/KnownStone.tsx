import { Link } from 'wouter';
import { ACTION_MARKS } from '../../picture/actionMarks';
import { stoneTitle } from '../journal/stoneTitle';
import { useCurrentPhoto, useJournal, useMinded } from '../stores';

/** Which stone of its batch this is, once the check is kept, and whether its past changed the verdict. */
export function KnownStone({ place }: { place: number }) {
  const photo = useCurrentPhoto();
  const known = useMinded()?.get(place);
  const kept = useJournal((state) => (photo === null ? undefined : state.keptAs[photo.id]));
  if (!known || !kept) return null;
  const { name, stone, checkCount, photoAction, verdict } = known;
  return (
    <p className="known-stone">
      <Link href={`/journal/${kept.batch}/${stone}`}>{stoneTitle(name)}</Link> of its batch,{' '}
      {checkCount === 1 ? 'first check' : `${checkCount} checks`}.
      {verdict.action !== photoAction &&
        ` The photo alone would say ${ACTION_MARKS[photoAction].word.toLowerCase()}.`}
    </p>
  );
}
