import { useState } from 'react';
import { type BatchHistory, placeKey } from '../../history/batchHistory';
import { type Proposal, proposeAnew } from '../../history/proposeStones';
import type { CheckRecord } from '../../journal/records';
import { texts } from '../../texts/speech';
import { WhichStones } from '../keep/WhichStones';
import { useJournal } from '../stores';
import { StonePicture } from './StonePicture';

interface Props {
  readonly history: BatchHistory;
  readonly photo: CheckRecord;
}

/** Says which stones lie in a kept photo, where that is not known yet or was taken wrongly. */
export function NameStones({ history, photo }: Props) {
  const name = useJournal((state) => state.name);
  const words = texts().journal.batch;
  const [asked, setAsked] = useState<readonly Proposal[] | null>(null);
  const isNamed = ({ place }: CheckRecord['stones'][number]) =>
    history.checks.some(({ stoneAt }) => stoneAt.has(placeKey(photo.id, place)));
  const unnamed = photo.stones.filter((stone) => !isNamed(stone)).length;
  if (photo.stones.every(({ look }) => look === null)) return null;
  return (
    <>
      <button
        type="button"
        className={unnamed > 0 ? 'button' : 'button button-quiet'}
        onClick={() => setAsked(proposeAnew(history, photo))}
      >
        {unnamed > 0 ? words.nameStones(unnamed) : words.whichIsWhich}
      </button>
      {asked !== null && (
        <WhichStones
          batch={photo.batch}
          proposals={asked}
          asksAll={unnamed === 0}
          picture={(place) => {
            const stone = photo.stones.find((one) => one.place === place);
            return stone && <StonePicture face={{ photo, stone }} label="" />;
          }}
          onDone={async (stones) => {
            if (await name(photo, stones)) setAsked(null);
          }}
          onClose={() => setAsked(null)}
        />
      )}
    </>
  );
}
