import type { MachineRecord } from '../../journal/records';
import { filling } from '../../recipes/filling';
import type { NextGroup } from '../../recipes/nextGroups';
import { type Units, weightWords } from '../../recipes/units';
import { LoadBar } from './LoadBar';
import { fillWords, groupWords, roomWords } from './planWords';

/** How full a machine is of a group of stones, and what to add. */
export function GroupFilling({
  group,
  machine,
  isTurning,
  units,
}: {
  group: NextGroup;
  machine: MachineRecord | null;
  /** True once the group's run was started. */
  isTurning: boolean;
  units: Units;
}) {
  const { stones, from, step, load } = group;
  const fill = filling(load, machine?.capacityKg ?? null);
  return (
    <div className="group-filling">
      <p>
        <strong>{groupWords(stones.length, from, step, isTurning)}</strong>
        <span className="fine">
          , about {weightWords(load.kg, units)} ({weightWords(load.kgLow, units)} to{' '}
          {weightWords(load.kgHigh, units)})
        </span>
      </p>
      {fill !== null && machine !== null && (
        <>
          <LoadBar filling={fill} />
          <p className="fine">
            {percent(fill.share)} of a full load in {machine.name} ({percent(fill.shareLow)} to{' '}
            {percent(fill.shareHigh)}), which takes {weightWords(machine.capacityKg ?? 0, units)}.
          </p>
          <p className="group-add">{fillWords(fill, step, !isTurning && step !== from, units)}</p>
        </>
      )}
      {fill === null && machine !== null && (
        <p className="fine">
          Say in the journal what {machine.name} holds, and how full its {roomWords(machine.type)} is appears
          here.
        </p>
      )}
    </div>
  );
}

const percent = (share: number) => `${Math.round(100 * share)} %`;
