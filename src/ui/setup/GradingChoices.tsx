import { texts } from '../../texts/speech';
import { MaterialChoice } from './MaterialChoice';
import { StepChoice } from './StepChoice';

/** The two things a photo cannot tell: the step and the material. */
export function GradingChoices() {
  return (
    <section className="choices" aria-label={texts().setup.gradedAs}>
      <StepChoice />
      <MaterialChoice />
    </section>
  );
}
