import type { FlawReport } from '../../analysis/report';
import { texts } from '../../texts/speech';
import { flawWords } from './flawWords';

interface Props {
  readonly flaws: readonly FlawReport[];
  /** How many of them, from the first, the photo is sure of. */
  readonly sureCount: number;
  readonly lit: number | null;
  readonly onLit: (index: number | null) => void;
}

/** The flaws found, numbered as on the crop; touching one brings out its mark. */
export function FlawList({ flaws, sureCount, lit, onLit }: Props) {
  if (flaws.length === 0) return <p>{texts().stone.noFlaws}</p>;
  return (
    <ol className="flaws">
      {flaws.map((flaw, index) => (
        <li key={`${flaw.kind} ${flaw.row} ${flaw.column}`}>
          <button
            type="button"
            className="flaw"
            aria-pressed={lit === index}
            onClick={() => onLit(lit === index ? null : index)}
          >
            <span className="flaw-number">{index + 1}</span>
            {flawWords(flaw, index >= sureCount)}
          </button>
        </li>
      ))}
    </ol>
  );
}
