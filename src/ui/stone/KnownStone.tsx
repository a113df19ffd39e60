import { Link } from 'wouter';
import { ACTION_ORDER } from '../../picture/actionMarks';
import { texts } from '../../texts/speech';
import { ActionSign } from '../parts/ActionSign';
import { stoneTitle } from '../parts/stoneTitle';
import { useCurrentPhoto, useJournal, useMinded } from '../stores';

/** Which stone of its batch this is, once the check is kept, and what the owner does with it: one tap to disagree. */
export function KnownStone({ place }: { place: number }) {
  const photo = useCurrentPhoto();
  const known = useMinded()?.get(place);
  const kept = useJournal((state) => (photo === null ? undefined : state.keptAs[photo.id]));
  const say = useJournal((state) => state.say);
  if (!known || !kept) return null;
  const { name, stone, checkCount, photoAction, verdict, decision } = known;
  const { batch, check } = kept;
  const { stone: words, verdicts } = texts();
  return (
    <div className="known-stone">
      <p>
        <Link href={`/journal/${batch}/${stone}`}>{stoneTitle(name)}</Link> {words.ofBatch(checkCount)}
        {verdict.action !== photoAction && ` ${words.photoAlone(verdicts.actionsWithin[photoAction])}`}
      </p>
      <fieldset className="decide">
        <legend>{words.decide}</legend>
        {ACTION_ORDER.filter((action) => action !== 'look-closer').map((action) => (
          <button
            key={action}
            type="button"
            className="decide-action"
            data-action={action}
            aria-pressed={decision === action}
            onClick={() => say([{ kind: 'decision', batch, check, stone, action }])}
          >
            <ActionSign action={action} />
            {verdicts.actions[action]}
          </button>
        ))}
      </fieldset>
    </div>
  );
}
