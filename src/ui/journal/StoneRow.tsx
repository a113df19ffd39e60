import { Link } from 'wouter';
import type { MaterialName } from '../../grading/materials';
import type { StoneHistory } from '../../history/batchHistory';
import { stoneOutlook } from '../../history/stoneOutlook';
import { usualEndOf } from '../../history/usualEnds';
import { type UsualEnd, verdictNow } from '../../history/verdictNow';
import type { RecordId } from '../../journal/records';
import { texts } from '../../texts/speech';
import { ActionSign } from '../parts/ActionSign';
import { stoneTitle } from '../parts/stoneTitle';
import { StonePicture } from './StonePicture';

interface Props {
  readonly batch: RecordId;
  readonly history: StoneHistory;
  readonly ends: ReadonlyMap<MaterialName, UsualEnd>;
}

/** A stone of a batch: its picture, what to do with it with all its checks in mind, and its outlook. */
export function StoneRow({ batch, history, ends }: Props) {
  const { stone, checks } = history;
  const { journal, verdicts } = texts();
  const last = checks.at(-1)!;
  const usualEnd = usualEndOf(ends, stone.material);
  const { action } = verdictNow(checks, stone.material, usualEnd);
  const outlook = stoneOutlook(checks);
  const note = outlook && outlook.kind === 'clears' && action !== 'set-aside' ? outlook.sentence : '';
  return (
    <li className="stone-row" data-action={action}>
      <StonePicture face={last.faces[0]} label="" />
      <div>
        <p className="stone-row-name">
          <Link href={`/journal/${batch}/${stone.id}`}>{stoneTitle(stone.name)}</Link>
          {stone.isFavorite && <span title={journal.stone.favorite}> ★</span>}
          {stone.material !== null && <span className="fine"> {verdicts.materials[stone.material]}</span>}
        </p>
        <p className="stone-row-action">
          <ActionSign action={action} />
          <strong>{verdicts.actions[action]}</strong>
          {last.decision !== null && last.decision !== action && (
            <span className="fine"> {journal.stone.youDid(verdicts.actionsWithin[last.decision])}</span>
          )}
        </p>
        {note !== '' && <p className="fine">{note}</p>}
      </div>
    </li>
  );
}
