import { BALL_RANGE_MM } from '../../state/keptSettings';
import { useSettings } from '../stores';

/** The reference ball: its diameter, or none with the lamp and camera left as they were. */
export function BallChoice() {
  const ballMm = useSettings((state) => state.ballMm);
  const noBall = useSettings((state) => state.noBall);
  const rig = useSettings((state) => state.rig);
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
      <label className="tick">
        <input
          type="checkbox"
          checked={noBall}
          disabled={rig === null}
          onChange={(event) => change({ noBall: event.target.checked })}
        />
        No ball in the tray: lamp and camera stand where they stood
      </label>
      <p className="fine">
        {rig === null
          ? 'Measure one photo of your own with the ball first; its lamp and camera are remembered here.'
          : `Remembered from your last photo with a ball: 1 mm is ${(1 / rig.mmPerPx).toFixed(1)} pixels.`}
      </p>
    </div>
  );
}
