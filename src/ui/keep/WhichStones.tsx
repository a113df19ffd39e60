import { type ReactNode, useMemo, useState } from 'react';
import type { BatchHistory, StoneHistory } from '../../history/batchHistory';
import { type Proposal, swapStones } from '../../history/proposeStones';
import type { RecordId } from '../../journal/records';
import type { NamedPlace } from '../../state/keepCheck';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { StonePicture } from '../journal/StonePicture';
import { useHistory } from '../journal/useHistory';
import { Modal } from '../parts/Modal';

interface Props {
  readonly batch: RecordId;
  readonly proposals: readonly Proposal[];
  /** True to ask about the sure ones too. */
  readonly asksAll?: boolean;
  /** Draws the stone at a place of the photo. */
  readonly picture: (place: number) => ReactNode;
  readonly onDone: (stones: readonly NamedPlace[]) => void;
  readonly onClose: () => void;
}

/** Likeliest stones offered beside the one taken; the others are a tap further. */
const OFFERED = 3;

/** Asks which stone is which where the match is not sure; a tap on another stone swaps the two. */
export function WhichStones({ batch, proposals, asksAll = false, picture, onDone, onClose }: Props) {
  const words = texts().keep.which;
  const history = useHistory(batch);
  const [stones, setStones] = useState<ReadonlyMap<number, RecordId | null>>(
    () => new Map(proposals.map(({ place, stone }) => [place, stone])),
  );
  const [touched, setTouched] = useState<ReadonlySet<number>>(new Set());
  const asked = proposals.filter(({ isUnsure }) => isUnsure || asksAll);
  const sure = proposals.filter(({ isUnsure }) => !isUnsure).length;
  const choose = (place: number, stone: RecordId | null) => {
    const swapped = swapStones(stones, place, stone);
    const changed = [...swapped].filter(([at, one]) => stones.get(at) !== one).map(([at]) => at);
    setTouched(new Set([...touched, ...changed]));
    setStones(swapped);
  };
  const finish = () =>
    onDone(
      proposals.map(({ place, confidence, isUnsure }) => {
        const isSaid = isUnsure || touched.has(place);
        return { place, stone: stones.get(place) ?? null, confidence: isSaid ? null : confidence };
      }),
    );
  if (!history) return null;
  return (
    <Modal
      title={words.title}
      onClose={onClose}
      closeWord={words.later}
      action={{ word: words.done, run: finish }}
    >
      <p>{words.compare(sure, proposals.length, asksAll)}</p>
      <ul className="which">
        {asked.map(({ place, candidates }) => (
          <Question
            key={place}
            place={place}
            candidates={candidates}
            chosen={stones.get(place) ?? null}
            history={history}
            picture={picture}
            onChoose={(stone) => choose(place, stone)}
          />
        ))}
      </ul>
    </Modal>
  );
}

interface QuestionProps extends Pick<Props, 'picture'> {
  readonly place: number;
  readonly candidates: readonly RecordId[];
  readonly chosen: RecordId | null;
  readonly history: BatchHistory;
  readonly onChoose: (stone: RecordId | null) => void;
}

function Question({ place, candidates, chosen, history, picture, onChoose }: QuestionProps) {
  const words = texts().keep.which;
  const [all, setAll] = useState(false);
  const offered = useMemo(() => {
    const likeliest = all ? candidates : candidates.slice(0, OFFERED);
    return chosen !== null && !likeliest.includes(chosen) ? [chosen, ...likeliest] : likeliest;
  }, [all, candidates, chosen]);
  return (
    <li className="which-stone">
      <figure className="which-seen">
        {picture(place)}
        <figcaption>{words.place(place)}</figcaption>
      </figure>
      <div className="which-choices" role="radiogroup" aria-label={words.placeInPhoto(place)}>
        {offered.map((id) => {
          const known = history.stones.find(({ stone: { id: one } }) => one === id);
          return (
            known && <Choice key={id} known={known} isChosen={chosen === id} onChoose={() => onChoose(id)} />
          );
        })}
        {/* biome-ignore lint/a11y/useSemanticElements: a choice made of a picture */}
        <button
          type="button"
          role="radio"
          className="which-choice"
          aria-checked={chosen === null}
          onClick={() => onChoose(null)}
        >
          <span className="which-new" aria-hidden="true">
            +
          </span>
          {words.fresh}
        </button>
        {!all && candidates.length > OFFERED && (
          <button type="button" className="button button-quiet" onClick={() => setAll(true)}>
            {words.others}
          </button>
        )}
      </div>
    </li>
  );
}

function Choice({
  known,
  isChosen,
  onChoose,
}: {
  known: StoneHistory;
  isChosen: boolean;
  onChoose: () => void;
}) {
  const face = known.checks.at(-1)?.faces[0];
  return (
    // biome-ignore lint/a11y/useSemanticElements: a choice made of a picture
    <button type="button" role="radio" className="which-choice" aria-checked={isChosen} onClick={onChoose}>
      {face && <StonePicture face={face} label="" />}
      {texts().keep.which.known(ownWords(known.stone.name))}
    </button>
  );
}
