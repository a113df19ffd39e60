import { useId } from 'react';
import { BALL_RANGE_MM } from '../../state/keptSettings';
import { lengthNumber, lengthUnit, lengthWords, mmOfTyped, typedLength } from '../../texts/measures';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { KeptNumberInput } from '../parts/NumberInput';
import { useSettings } from '../stores';

/** Diameter of the reference ball. */
export function BallChoice() {
  const ballMm = useSettings((state) => state.ballMm);
  const noBall = useSettings((state) => state.noBall);
  const change = useSettings((state) => state.change);
  const words = texts().setup;
  const id = useId();
  const [least, most] = BALL_RANGE_MM;
  const setDiameter = (typed: number) => {
    const wished = mmOfTyped(typed);
    if (wished >= least && wished <= most) change({ ballMm: wished });
  };
  return (
    <div className="choices">
      <label className="field" htmlFor={id}>
        <span className="field-label">{words.ballDiameter(lengthUnit())}</span>
        <KeptNumberInput
          id={id}
          kept={withDecimalMark(String(typedLength(ballMm)))}
          disabled={noBall}
          onNumber={setDiameter}
        />
        <span className="fine">{words.ballRange(lengthNumber(least), lengthWords(most))}</span>
      </label>
    </div>
  );
}
