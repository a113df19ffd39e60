import { useSettings, useStoreActions } from '../stores';

/** The reference ball: its diameter, or none with the lamp and camera left as they were. */
export function BallChoice() {
  const { measureAgain } = useStoreActions();
  const ballMm = useSettings((state) => state.ballMm);
  const noBall = useSettings((state) => state.noBall);
  const rig = useSettings((state) => state.rig);
  const change = useSettings((state) => state.change);
  const setDiameter = (wished: number) => {
    if (!(wished >= 4 && wished <= 60) || wished === ballMm) return;
    change({ ballMm: wished });
    measureAgain();
  };
  return (
    <div className="choices">
      <label className="field">
        <span className="field-label">Diameter of the dark glass ball, mm</span>
        <input
          type="number"
          inputMode="decimal"
          min="4"
          max="60"
          step="0.1"
          defaultValue={ballMm}
          disabled={noBall}
          onBlur={(event) => setDiameter(event.target.valueAsNumber)}
          onKeyDown={(event) => event.key === 'Enter' && setDiameter(event.currentTarget.valueAsNumber)}
        />
        <span className="fine">4 to 60 mm. All sizes are measured against it.</span>
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={noBall}
          disabled={rig === null}
          onChange={(event) => {
            change({ noBall: event.target.checked });
            measureAgain();
          }}
        />
        No ball in the tray: lamp and camera stand where they stood
      </label>
      <p className="fine">
        {rig === null
          ? 'Measure one photo with the ball first; its lamp and camera are remembered here.'
          : `Remembered from the last photo with a ball: 1 mm is ${(1 / rig.mmPerPx).toFixed(1)} pixels.`}
      </p>
    </div>
  );
}
