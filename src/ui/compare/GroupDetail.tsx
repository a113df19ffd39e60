import { useState } from 'react';
import type { CompareBy, CompareWhat } from '../../compare/compareBy';
import { moreIsBetter } from '../../compare/compareGroups';
import { nameInside } from '../../compare/compareWords';
import type { GroupSummary } from '../../compare/groupSummary';
import { sureWords } from '../../compare/groupWords';
import { standings } from '../../compare/standings';
import { standingWords } from '../../compare/standingWords';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { stoneTitle } from '../parts/stoneTitle';
import type { OpenStone } from './stoneLinks';
import { stoneWords } from './stoneWords';

interface Props {
  readonly id: string;
  readonly group: GroupSummary;
  readonly groups: readonly GroupSummary[];
  readonly by: CompareBy;
  readonly what: CompareWhat;
  readonly batchNames: ReadonlyMap<string, string>;
  readonly onStone: OpenStone;
}

/** So many stones are listed at first, and with each press on "more". */
const LISTED = 60;

/** What can be said of a group, and each of its stones, the best first. */
export function GroupDetail({ id, group, groups, by, what, batchNames, onStone }: Props) {
  const words = texts().compare;
  const [listed, setListed] = useState(LISTED);
  const figures = moreIsBetter(what) ? [...group.figures].reverse() : group.figures;
  const more = figures.length - listed;
  return (
    <div id={id} className="compare-detail">
      {saidOf(group, groups, by, what).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <ul className="compare-stones">
        {figures.slice(0, listed).map((figure) => (
          <li key={`${figure.stone.batch} ${figure.stone.stone}`}>
            <button
              type="button"
              className="compare-stone"
              onClick={() => onStone(figure.stone.batch, figure.stone.stone)}
            >
              <strong>{stoneTitle(figure.stone.name)}</strong>
              {by !== 'batch' && <span> {batchWords(batchNames.get(figure.stone.batch))}</span>}
              <span className="compare-stone-words">{stoneWords(figure, what)}</span>
            </button>
          </li>
        ))}
      </ul>
      {more > 0 && (
        <button type="button" className="button" onClick={() => setListed(listed + LISTED)}>
          {words.showMore(Math.min(more, LISTED), figures.length)}
        </button>
      )}
    </div>
  );
}

function batchWords(name: string | undefined): string {
  const { ofBatch, ofUnnamedBatch } = texts().compare;
  return name === undefined ? ofUnnamedBatch : ofBatch(ownWords(name));
}

function saidOf(
  group: GroupSummary,
  groups: readonly GroupSummary[],
  by: CompareBy,
  what: CompareWhat,
): string[] {
  const words = texts().compare;
  if (group.isFew) return [words.fiveOfAGroup];
  const sure = sureWords(group, what);
  const against = standingWords(standings(group, groups, what), by, what);
  const oneBatch = by !== 'batch' && group.batches === 1 ? [words.oneBatch(nameInside(group.name, by))] : [];
  return [...(sure === null || what === 'finished' ? [] : [sure]), ...against, ...oneBatch];
}
