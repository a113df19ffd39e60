import type { Filling } from '../../recipes/filling';

/** How far the bar reaches, as a share of a full load. */
const END = 1.25;
const at = (share: number) => `${(100 * Math.min(END, Math.max(0, share))) / END}%`;

/** How full a machine is: solid as far as is sure, pale as far as it may be, a mark at the full load. For the eye alone. */
export function LoadBar({ filling }: { filling: Filling }) {
  const { shareLow, share, shareHigh } = filling;
  return (
    <div className="load-bar" data-kind={filling.kind} aria-hidden="true">
      <span className="load-may" style={{ width: at(shareHigh) }} />
      <span className="load-sure" style={{ width: at(shareLow) }} />
      <span className="load-best" style={{ insetInlineStart: at(share) }} />
      <span className="load-full" style={{ insetInlineStart: at(1) }} />
    </div>
  );
}
