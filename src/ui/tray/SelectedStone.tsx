import type { StoneReport } from '../../analysis/report';
import { outlinePath } from '../../picture/outlinePath';

interface Props {
  readonly stone: StoneReport;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Dims everything but the stone being looked at. */
export function SelectedStone({ stone, widthPx, heightPx }: Props) {
  const frame = `M0 0H${widthPx}V${heightPx}H0Z`;
  return (
    <svg
      className="selected-stone"
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      aria-hidden="true"
      focusable="false"
    >
      <path d={`${frame}${outlinePath(stone.outline, 0.5)}`} fillRule="evenodd" />
    </svg>
  );
}
