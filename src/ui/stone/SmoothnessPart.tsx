import type { StoneGrade } from '../../grading/gradeStone';

/** The smoothness figure, and what each kind of flaw took off it. */
export function SmoothnessPart({ grade }: { grade: Pick<StoneGrade, 'smoothness' | 'smoothnessParts'> }) {
  return (
    <section>
      <h3>Smoothness</h3>
      <p>
        <span className="big-number">{Math.round(grade.smoothness)}</span> of 100
      </p>
      <ul className="parts">
        {grade.smoothnessParts.map(({ kind, lost, why }) => (
          <li key={kind}>
            <span>{why}</span>
            <strong>{lost < 0.5 ? '0' : `−${Math.round(lost)}`}</strong>
          </li>
        ))}
      </ul>
    </section>
  );
}
