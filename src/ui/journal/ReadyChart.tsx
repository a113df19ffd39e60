import type { BatchOutlook } from '../../history/batchOutlook';

/** How many stones of a batch are ready from check to check, as a row of stacks. */
export function ReadyChart({ outlook }: { outlook: BatchOutlook }) {
  const { readyAfter, inCoarse } = outlook;
  const when = (days: number) =>
    days === 0 ? 'now' : days < 14 ? `${Math.round(days)} days` : `${Math.round(days / 7)} weeks`;
  return (
    <ol className="ready-chart">
      {readyAfter.map(({ days, stones }) => (
        <li key={days}>
          <span className="ready-stack" aria-hidden="true">
            <span className="ready-part" style={{ height: `${(100 * stones) / inCoarse}%` }} />
          </span>
          <strong>{stones}</strong>
          <span className="fine">{when(days)}</span>
        </li>
      ))}
    </ol>
  );
}
