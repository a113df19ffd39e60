import type { StoneGrade } from '../../grading/gradeStone';

type Shown = Pick<StoneGrade, 'smoothness' | 'smoothnessParts' | 'pitRating'>;

/** The smoothness figure, what each kind of flaw took off it, and how much of the stone it rests on. */
export function SmoothnessPart({ grade, inspectedCm2 }: { grade: Shown; inspectedCm2: number }) {
  const { density, size } = grade.pitRating;
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
      <p className="fine">
        {inspectedCm2.toFixed(1)} cm² looked at; what lies beyond is not seen, not sound.
        {(density ?? size) &&
          ` Pits in the classes of ASTM G46: ${[density, size].filter(Boolean).join(', ')}.`}
      </p>
    </section>
  );
}
