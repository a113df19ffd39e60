import type { MachineRecord } from '../../journal/records';
import { filling } from '../../recipes/filling';
import type { NextGroup } from '../../recipes/nextGroups';
import { type Units, weightWords } from '../../recipes/units';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { LoadBar } from './LoadBar';
import { fillWords, groupWords } from './planWords';

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
  const words = texts().plan;
  const weight = (kg: number) => weightWords(kg, units);
  const { stones, from, step, load } = group;
  const fill = filling(load, machine?.capacityKg ?? null);
  return (
    <div className="group-filling">
      <p>
        <strong>{groupWords(stones.length, from, step, isTurning)}</strong>
        <span className="fine">
          {words.groupWeight(weight(load.kg), weight(load.kgLow), weight(load.kgHigh))}
        </span>
      </p>
      {fill !== null && machine !== null && (
        <>
          <LoadBar filling={fill} />
          <p className="fine">
            {words.shareOfLoad(
              percent(fill.share),
              percent(fill.shareLow),
              percent(fill.shareHigh),
              ownWords(machine.name),
              weight(machine.capacityKg ?? 0),
            )}
          </p>
          <p className="group-add">{fillWords(fill, step, !isTurning && step !== from, units)}</p>
        </>
      )}
      {fill === null && machine !== null && (
        <p className="fine">{words.sayLoad(ownWords(machine.name), machine.type)}</p>
      )}
    </div>
  );
}

const percent = (share: number) => `${Math.round(100 * share)} %`;
