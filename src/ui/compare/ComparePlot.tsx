import { useMemo, useRef, useState } from 'react';
import type { CompareBy, CompareWhat } from '../../compare/compareBy';
import type { GroupSummary } from '../../compare/groupSummary';
import { texts } from '../../texts/speech';
import { GroupRow } from './GroupRow';
import { PlotScale } from './PlotScale';
import { plotAxis } from './plotAxis';
import type { OpenStone } from './stoneLinks';
import { useWidth } from './useWidth';

interface Props {
  readonly groups: readonly GroupSummary[];
  readonly by: CompareBy;
  readonly what: CompareWhat;
  readonly batchNames: ReadonlyMap<string, string>;
  readonly openKey: string | null;
  readonly onToggle: (key: string) => void;
  readonly onStone: OpenStone;
}

/** So many groups are shown at first, and with each press on "more". */
const SHOWN = 40;

/** A row for each group, under one scale; groups with too few stones by themselves at the end. */
export function ComparePlot({ groups, what, openKey, ...rest }: Props) {
  const words = texts().compare;
  const scale = useRef<HTMLDivElement>(null);
  const width = useWidth(scale);
  const axis = useMemo(() => plotAxis(groups, what, width), [groups, what, width]);
  const [shown, setShown] = useState(() =>
    Math.max(SHOWN, 1 + groups.findIndex(({ key }) => key === openKey)),
  );
  const some = groups.slice(0, shown);
  const row = (group: GroupSummary) => (
    <GroupRow
      key={group.key}
      group={group}
      groups={groups}
      what={what}
      axis={axis}
      isOpen={group.key === openKey}
      {...rest}
    />
  );
  const few = some.filter(({ isFew }) => isFew);
  return (
    <div className="compare-plot">
      <div className="plot-head">
        <div className="plot-place" ref={scale}>
          <PlotScale axis={axis} what={what} />
        </div>
      </div>
      {width > 0 && (
        <>
          <ul>{some.filter(({ isFew }) => !isFew).map(row)}</ul>
          {few.length > 0 && (
            <>
              <h3 className="compare-few">{words.fewTitle}</h3>
              <ul>{few.map(row)}</ul>
            </>
          )}
        </>
      )}
      {groups.length > shown && (
        <button type="button" className="button" onClick={() => setShown(shown + SHOWN)}>
          {words.showMore(Math.min(SHOWN, groups.length - shown), groups.length)}
        </button>
      )}
    </div>
  );
}
