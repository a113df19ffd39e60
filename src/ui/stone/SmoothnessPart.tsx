import type { StoneGrade } from '../../grading/gradeStone';
import { surfaceWords } from '../../texts/measures';
import { texts } from '../../texts/speech';
import { HelpLink } from '../parts/HelpLink';
import { Rich } from '../parts/Rich';

type Shown = Pick<StoneGrade, 'smoothness' | 'smoothnessParts' | 'pitRating'>;

/** The smoothness figure, what each kind of flaw took off it, and how much of the stone it rests on. */
export function SmoothnessPart({ grade, inspectedCm2 }: { grade: Shown; inspectedCm2: number }) {
  const words = texts().stone;
  const { density, size } = grade.pitRating;
  const classes = [density, size].filter((one) => one !== null);
  return (
    <section>
      <h3>
        {words.smoothness} <HelpLink to="numbers" />
      </h3>
      <p className="big-number">
        <Rich text={words.smoothnessOf(String(Math.round(grade.smoothness)))} />
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
        {words.inspected(surfaceWords(inspectedCm2, 1))}
        {classes.length > 0 && ` ${words.pitClasses(classes)}`}
      </p>
    </section>
  );
}
