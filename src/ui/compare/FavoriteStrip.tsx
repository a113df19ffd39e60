import { type ReactNode, useMemo, useState } from 'react';
import { nameInside } from '../../compare/compareWords';
import type { StoneDigest } from '../../history/batchDigest';
import { stoneTitle } from '../parts/stoneTitle';
import type { OpenStone } from './stoneLinks';
import { favoriteLines } from './stoneWords';

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
  const [isWhole, setWhole] = useState(false);
  if (favorites.length === 0) return null;
  return (
    <section aria-labelledby="favorites-title">
      <h3 id="favorites-title">Favorites</h3>
      <ul className="favorites">
        {favorites.slice(0, isWhole ? favorites.length : SHOWN).map((stone) => (
          <li key={`${stone.batch} ${stone.stone}`}>
            <button type="button" className="favorite" onClick={() => onStone(stone.batch, stone.stone)}>
              <span className="favorite-picture">{picture(stone)}</span>
              <strong>{stoneTitle(stone.name)}</strong>
              <span className="favorite-lines">
                <span>{batchNames.get(stone.batch)}</span>
                <span>{nameInside(stone.material ?? '', 'material')}</span>
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
          {isWhole ? 'Show fewer' : `Show all ${favorites.length} favorites`}
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
