import type { BatchOutlook } from '../../history/batchOutlook';
import { texts } from '../../texts/speech';

/** How many stones of a batch are ready from check to check, as a row of stacks. */
export function ReadyChart({ outlook }: { outlook: BatchOutlook }) {
  const { readyAfter, inCoarse } = outlook;
  const { readyIn } = texts().journal;
  return (
    <ol className="ready-chart">
      {readyAfter.map(({ days, stones }) => (
        <li key={days}>
          <span className="ready-stack" aria-hidden="true">
            <span className="ready-part" style={{ height: `${(100 * stones) / inCoarse}%` }} />
          </span>
          <strong>{stones}</strong>
          <span className="fine">{readyIn(days)}</span>
        </li>
      ))}
    </ol>
  );
}
