import { memo, useMemo } from 'react';
import type { CompareWhat } from '../../compare/compareBy';
import type { GroupSummary } from '../../compare/groupSummary';
import { dotPaths } from './dotPaths';
import type { PlotAxis } from './plotAxis';

interface Props {
  readonly group: GroupSummary;
  readonly what: CompareWhat;
  readonly axis: PlotAxis;
}

const HEIGHT_PX = 66;
const MIDDLE_PX = HEIGHT_PX / 2;

/** Every stone of a group at its place along the axis; beside it stand the same figures in words. */
export const GroupDots = memo(function GroupDots({ group, what, axis }: Props) {
  const dots = useMemo(() => dotPaths(group, what, axis, MIDDLE_PX, HEIGHT_PX - 18), [group, what, axis]);
  const { middle } = group;
  return (
    <svg className="group-dots" width={axis.widthPx} height={HEIGHT_PX} aria-hidden="true" focusable="false">
      {axis.marks.map(({ value }) => (
        <path key={value} className="dots-grid" d={`M${axis.x(value).toFixed(1)} 0v${HEIGHT_PX}`} />
      ))}
      {axis.ceiling !== null && (
        <path className="dots-ceiling" d={`M${axis.x(axis.ceiling).toFixed(1)} 0v${HEIGHT_PX}`} />
      )}
      <Band group={group} what={what} axis={axis} />
      {what === 'finished' && <Strings group={group} axis={axis} />}
      <path className="dots-known" data-thick={dots.isThick} d={dots.known} />
      <path className="dots-waiting" data-thick={dots.isThick} d={dots.waiting} />
      <path className="dots-given-up" data-thick={dots.isThick} d={dots.givenUp} />
      {middle !== null && <Median x={axis.x(middle)} />}
    </svg>
  );
});

/** Threads the finished stones on one line and those set aside on another: their place is no figure of their own. */
function Strings({ group: { known, givenUp }, axis: { x } }: Pick<Props, 'group' | 'axis'>) {
  if (known + givenUp === 0) return null;
  const share = known / (known + givenUp);
  return (
    <>
      <path className="dots-string" d={`M${x(0)} ${MIDDLE_PX}H${x(share).toFixed(1)}`} />
      <path className="dots-string-rest" d={`M${x(share).toFixed(1)} ${MIDDLE_PX}H${x(1)}`} />
    </>
  );
}

/** A thin line that hides no stone, with thick ends. */
function Median({ x }: { x: number }) {
  const place = x.toFixed(1);
  return (
    <>
      <path className="dots-median-halo" d={`M${place} 0v${HEIGHT_PX}`} />
      <path className="dots-median" d={`M${place} 0v${HEIGHT_PX}`} />
      <path className="dots-median-ends" d={`M${place} 0v9M${place} ${HEIGHT_PX}v-9`} />
    </>
  );
}

/** The half of the stones in the middle, or what a share may truly be. */
function Band({ group, what, axis }: Props) {
  const [low, high] = (what === 'finished' ? group.sure : group.half) ?? [null, null];
  if (low === null) return null;
  const [left, right] = [axis.x(low), high === null ? axis.widthPx : axis.x(high)];
  const width = Math.max(4, right - left);
  return (
    <rect
      className="dots-band"
      x={(left + right - width) / 2}
      y="9"
      width={width}
      height={HEIGHT_PX - 18}
      rx="7"
    />
  );
}
