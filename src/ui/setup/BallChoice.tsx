import { BALL_RANGE_MM } from '../../state/keptSettings';
import { useSettings } from '../stores';

/** Diameter of the reference ball. */
export function BallChoice() {
  const ballMm = useSettings((state) => state.ballMm);
  const noBall = useSettings((state) => state.noBall);
  const change = useSettings((state) => state.change);
  const [least, most] = BALL_RANGE_MM;
  const setDiameter = (wished: number) => {
    if (wished >= least && wished <= most) change({ ballMm: wished });
  };
  return (
    <div className="choices">
      <label className="field">
        <span className="field-label">Diameter of the dark glass ball, mm</span>
        <input
          type="number"
          inputMode="decimal"
          min={least}
          max={most}
          step="0.1"
          defaultValue={ballMm}
          disabled={noBall}
          onChange={(event) => setDiameter(event.target.valueAsNumber)}
        />
        <span className="fine">
          {least} to {most} mm. All sizes are measured against it.
        </span>
      </label>
    </div>
  );
}
