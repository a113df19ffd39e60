import { memo, useId } from 'react';
import type { CompareBy, CompareWhat } from '../../compare/compareBy';
import { countWords, groupName } from '../../compare/compareWords';
import type { GroupSummary } from '../../compare/groupSummary';
import { groupWords } from '../../compare/groupWords';
import { useSpeech } from '../useSpeech';
import { GroupDetail } from './GroupDetail';
import { GroupDots } from './GroupDots';
import type { PlotAxis } from './plotAxis';
import type { OpenStone } from './stoneLinks';

interface Props {
  readonly group: GroupSummary;
  readonly groups: readonly GroupSummary[];
  readonly by: CompareBy;
  readonly what: CompareWhat;
  readonly axis: PlotAxis;
  readonly batchNames: ReadonlyMap<string, string>;
  readonly isOpen: boolean;
  readonly onToggle: (key: string) => void;
  readonly onStone: OpenStone;
}

/** A group: its name, its stones as dots, its figures in words. Opens the list of its stones. */
export const GroupRow = memo(function GroupRow(props: Props) {
  useSpeech();
  const { group, by, what, axis, isOpen, onToggle } = props;
  const id = useId();
  return (
    <li className="compare-row" data-few={group.isFew}>
      <button
        type="button"
        className="compare-open"
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        onClick={() => onToggle(group.key)}
      >
        <span className="compare-head">
          <strong className="compare-name">{groupName(group.name, by)}</strong>{' '}
          <span className="compare-count">{countWords(group, what)}</span>
        </span>
        <GroupDots group={group} what={what} axis={axis} />
        <span className="compare-words">{groupWords(group, what)}</span>
      </button>
      {isOpen && <GroupDetail id={id} {...props} />}
    </li>
  );
});
