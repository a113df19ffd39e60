import { type ReactNode, useMemo, useState } from 'react';
import type { StoneDigest } from '../../history/batchDigest';
import { texts } from '../../texts/speech';
import { stoneTitle } from '../parts/stoneTitle';
import type { OpenStone } from './stoneLinks';
import { favoriteLines, materialWords } from './stoneWords';

interface Props {
  readonly stones: readonly StoneDigest[];
  readonly batchNames: ReadonlyMap<string, string>;
  readonly picture: (stone: StoneDigest) => ReactNode;
  readonly onStone: OpenStone;
}

const SHOWN = 12;

/** The owner's favorites side by side, those with the most shine first. */
export function FavoriteStrip({ stones, batchNames, picture, onStone }: Props) {
  const favorites = useMemo(() => favoritesOf(stones), [stones]);
  const words = texts().compare;
  const [isWhole, setWhole] = useState(false);
  if (favorites.length === 0) return null;
  return (
    <section aria-labelledby="favorites-title">
      <h3 id="favorites-title">{words.favorites}</h3>
      <ul className="favorites">
        {favorites.slice(0, isWhole ? favorites.length : SHOWN).map((stone) => (
          <li key={`${stone.batch} ${stone.stone}`}>
            <button type="button" className="favorite" onClick={() => onStone(stone.batch, stone.stone)}>
              <span className="favorite-picture">{picture(stone)}</span>
              <strong>{stoneTitle(stone.name)}</strong>
              <span className="favorite-lines">
                <span>{batchNames.get(stone.batch)}</span>
                <span>{materialWords(stone)}</span>
                {favoriteLines(stone).map((line) => (
                  <span key={line}>{line}</span>
                ))}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {favorites.length > SHOWN && (
        <button type="button" className="button button-quiet" onClick={() => setWhole(!isWhole)}>
          {isWhole ? words.showFewer : words.showAllFavorites(favorites.length)}
        </button>
      )}
    </section>
  );
}

function favoritesOf(stones: readonly StoneDigest[]): StoneDigest[] {
  return stones
    .filter(({ isFavorite }) => isFavorite)
    .sort((a, b) => (b.gloss?.shareOfCeiling ?? 0) - (a.gloss?.shareOfCeiling ?? 0));
}
