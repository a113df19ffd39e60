import { type ReactNode, useCallback, useMemo, useState } from 'react';
import type { CompareBy, CompareWhat } from '../../compare/compareBy';
import { type ComparedGroups, compareGroups } from '../../compare/compareGroups';
import { groupSentence } from '../../compare/groupWords';
import { standings } from '../../compare/standings';
import { standingWords } from '../../compare/standingWords';
import type { StoneDigest } from '../../history/batchDigest';
import { texts } from '../../texts/speech';
import { useSpeech } from '../useSpeech';
import { CompareChoices } from './CompareChoices';
import { CompareEmpty } from './CompareEmpty';
import { ComparePlot } from './ComparePlot';
import { CompareTable } from './CompareTable';
import { FavoriteStrip } from './FavoriteStrip';
import type { OpenStone } from './stoneLinks';

/** What is compared, and the group whose stones are listed. */
export interface ComparePlace {
  readonly by: CompareBy;
  readonly what: CompareWhat;
  readonly open: string | null;
}

interface Props {
  readonly stones: readonly StoneDigest[];
  readonly batchNames: ReadonlyMap<string, string>;
  readonly onStone: OpenStone;
  /** Draws a stone, to fill a square. */
  readonly picture: (stone: StoneDigest) => ReactNode;
  /** Where to begin: where it was left, told by `onPlace`. */
  readonly place?: ComparePlace | undefined;
  readonly onPlace?: ((place: ComparePlace) => void) | undefined;
}

const START: ComparePlace = { by: 'material', what: 'gloss', open: null };

/** Materials, sources, batches and steps compared by what their stones came to, and the favorites side by side. */
export function CompareScreen({ stones, batchNames, onStone, picture, place = START, onPlace }: Props) {
  const [here, setHere] = useState(place);
  const { by, what, open } = here;
  const speech = useSpeech();
  // biome-ignore lint/correctness/useExhaustiveDependencies: groups are called by names of the language spoken
  const compared = useMemo(
    () => compareGroups(stones, by, what, batchNames),
    [stones, by, what, batchNames, speech],
  );
  const change = useCallback(
    (next: ComparePlace) => {
      setHere(next);
      onPlace?.(next);
    },
    [onPlace],
  );
  const toggle = useCallback(
    (key: string) => change({ by, what, open: key === open ? null : key }),
    [change, by, what, open],
  );
  return (
    <section className="journal compare" aria-labelledby="compare-title">
      <h2 id="compare-title">{speech.texts.compare.title}</h2>
      {stones.length === 0 ? (
        <CompareEmpty what={null} />
      ) : (
        <>
          <CompareChoices
            by={by}
            what={what}
            onBy={(next) => change({ by: next, what, open: null })}
            onWhat={(next) => change({ by, what: next, open })}
          />
          <Compared
            compared={compared}
            {...{ by, what, batchNames, onStone }}
            openKey={open}
            onToggle={toggle}
          />
          <FavoriteStrip {...{ stones, batchNames, picture, onStone }} />
        </>
      )}
    </section>
  );
}

interface ComparedProps {
  readonly compared: ComparedGroups;
  readonly by: CompareBy;
  readonly what: CompareWhat;
  readonly batchNames: ReadonlyMap<string, string>;
  readonly openKey: string | null;
  readonly onToggle: (key: string) => void;
  readonly onStone: OpenStone;
}

function Compared({ compared, ...plot }: ComparedProps) {
  const { groups, without } = compared;
  const { by, what } = plot;
  const words = texts().compare;
  if (groups.length === 0) return <CompareEmpty what={what} />;
  return (
    <>
      <p className="compare-said" role="status">
        {saidOfBest(compared, by, what)}
      </p>
      <ComparePlot key={`${by} ${what}`} groups={groups} {...plot} />
      <p className="fine">
        {words.reading[what]}
        {without > 0 && ` ${words.withoutFigure(without)}`}
      </p>
      <CompareTable groups={groups} by={by} what={what} />
    </>
  );
}

/** What the best group came to, and whether that sets it apart. */
function saidOfBest({ groups }: ComparedGroups, by: CompareBy, what: CompareWhat): string {
  const best = groups[0];
  if (best === undefined || best.isFew) {
    return texts().compare.noGroupYet;
  }
  return [groupSentence(best, by, what), ...standingWords(standings(best, groups, what), by, what)].join(' ');
}
