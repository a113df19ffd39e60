import type { CompareWhat } from '../../compare/compareBy';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import type { PlotAxis } from './plotAxis';

/** The numbers along the axis, which stay in sight while the rows pass below. */
export function PlotScale({ axis, what }: { axis: PlotAxis; what: CompareWhat }) {
  const words = texts().compare;
  const { x, marks, ceiling, widthPx } = axis;
  return (
    <>
      <span className="plot-title fine">
        {words.axis[what]}
        {ceiling !== null && <strong>{words.ceiling}</strong>}
      </span>
      <svg className="plot-scale" width={widthPx} height="26" aria-hidden="true" focusable="false">
        {marks.map(({ value, label }) => (
          <text key={label} x={x(value)} y="18" textAnchor="middle" data-ceiling={value === ceiling}>
            {withDecimalMark(label)}
          </text>
        ))}
      </svg>
    </>
  );
}
