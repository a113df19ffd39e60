import { texts } from '../../texts/speech';
import { axisScale, roundMarks } from './chartScale';

interface Props {
  /** Estimated gloss at 60°, gloss units, and the ends of its interval. */
  readonly gu: number;
  readonly low: number;
  readonly high: number;
  /** What a perfect polish of the material reads. */
  readonly ceiling: number;
}

/** The stone's gloss on a scale that ends a little above its material's ceiling. */
export function GlossScale({ gu, low, high, ceiling }: Props) {
  const most = Math.max(100, ceiling * 1.05, high);
  const x = axisScale([0, most], [10, 350]);
  const wide = Math.max(3, x(high) - x(low));
  return (
    <svg
      className="gloss-scale"
      viewBox="0 0 360 62"
      role="img"
      aria-label={texts().stone.glossOfCeiling(String(Math.round(gu)), String(Math.round(ceiling)))}
    >
      <path className="scale-line" d="M10 30H350" />
      {roundMarks(most, 5).map((mark) => (
        <g key={mark}>
          <path className="scale-line" d={`M${x(mark)} 30v7`} />
          <text x={x(mark)} y="52" textAnchor="middle">
            {mark}
          </text>
        </g>
      ))}
      <path className="scale-between" d={`M${(x(low) + x(high) - wide) / 2} 30h${wide}`} />
      <path className="scale-here" d={`M${x(gu)} 20v20`} />
      <path className="scale-ceiling" d={`M${x(ceiling)} 16v22`} />
      <text x={Math.min(348, x(ceiling) + 4)} y="12" textAnchor="end">
        {texts().stone.perfectPolish}
      </text>
    </svg>
  );
}
