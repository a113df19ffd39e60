import type { HighlightReport } from '../../analysis/report';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { Rich } from '../parts/Rich';
import { axisScale, roundMarks } from './chartScale';

const [LEFT, RIGHT, TOP, BOTTOM] = [40, 348, 12, 150];

/** The highlight's brightness from its center outward: what the photo shows, and the fitted surface. */
export function HighlightChart({ profile }: { profile: HighlightReport['profile'] }) {
  const words = texts().stone.chart;
  const { distance, measured, model } = profile;
  const farthest = Math.max(...distance, 1);
  const brightest = Math.max(...measured, ...model, 0.05) * 1.08;
  const x = axisScale([0, farthest], [LEFT, RIGHT]);
  const y = axisScale([0, brightest], [BOTTOM, TOP]);
  const place = (value: number, index: number) =>
    `${x(distance[index] ?? 0).toFixed(1)} ${y(value).toFixed(1)}`;
  return (
    <figure className="chart">
      <svg viewBox="0 0 360 186" role="img" aria-label={words.title}>
        {roundMarks(brightest, 3).map((mark) => (
          <g key={`y${mark}`} className="chart-grid">
            <path d={`M${LEFT} ${y(mark)}H${RIGHT}`} />
            <text x={LEFT - 6} y={y(mark) + 4} textAnchor="end">
              {Math.round(mark * 100)}
            </text>
          </g>
        ))}
        {roundMarks(farthest, 5).map((mark) => (
          <text key={`x${mark}`} className="chart-mark" x={x(mark)} y={BOTTOM + 16} textAnchor="middle">
            {withDecimalMark(String(mark))}
          </text>
        ))}
        <text className="chart-mark" x={(LEFT + RIGHT) / 2} y={BOTTOM + 33} textAnchor="middle">
          {words.across}
        </text>
        <path className="chart-model" d={`M${model.map(place).join('L')}`} />
        {measured.map((value, index) => (
          <circle
            key={distance[index]}
            className="chart-measured"
            cx={x(distance[index] ?? 0)}
            cy={y(value)}
            r="3.2"
          />
        ))}
      </svg>
      <figcaption>
        <Rich text={words.caption} />
      </figcaption>
    </figure>
  );
}
