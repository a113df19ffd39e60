import type { PhotoReport } from '../../analysis/report';
import { rigAdvice } from '../../grading/rigAdvice';
import { rigNotes } from '../../grading/rigNotes';
import { texts } from '../../texts/speech';
import { useCurrentPhoto, useSettings } from '../stores';
import { LampSketch } from './LampSketch';
import { daySentence, lampSentence } from './rigWords';

/** Lamp and camera: what the photo tells of them, how they compare with the remembered ones, and what to better. */
export function RigPart() {
  const words = texts().setup;
  const photo = useCurrentPhoto();
  const rig = useSettings((state) => state.rig);
  const rigDay = useSettings((state) => state.rigDay);
  const noBall = useSettings((state) => state.noBall);
  const keepRig = useSettings((state) => state.keepRig);
  const change = useSettings((state) => state.change);
  const report = photo?.report ?? null;
  const withBall = report?.ball ? report : null;
  return (
    <section className="choices rig" aria-label={words.lampAndCamera}>
      <h3>{words.lampAndCamera}</h3>
      <LampSketch now={withBall?.rig.light ?? null} remembered={rig?.light ?? null} />
      {withBall !== null && <RigFacts report={withBall} />}
      {report !== null && rig !== null && <Comparison report={report} isKept={report.rig === rig} />}
      <p className="fine" role="status">
        {rig === null ? words.nothingRemembered : daySentence(rigDay)}
      </p>
      {withBall !== null && photo?.sample !== true && withBall.rig !== rig && (
        <button type="button" className="button button-strong" onClick={() => keepRig(withBall.rig)}>
          {rig === null ? words.remember : words.rememberInstead}
        </button>
      )}
      {(withBall === null || photo?.sample === true) && (
        <p className="fine">{photo?.sample === true ? words.isSample : words.needsBall}</p>
      )}
      <label className="tick">
        <input
          type="checkbox"
          checked={noBall}
          disabled={rig === null}
          onChange={(event) => change({ noBall: event.target.checked })}
        />
        {words.noBall}
      </label>
    </section>
  );
}

/** What the ball told, each fact with what to do about it. */
function RigFacts({ report }: { report: PhotoReport }) {
  return (
    <ul className="rig-facts">
      <li>{lampSentence(report.rig.light)}</li>
      {rigAdvice(report.rig).map(({ about, inOrder, sentence }) => (
        <li key={about} data-wanting={!inOrder}>
          {sentence}
        </li>
      ))}
    </ul>
  );
}

function Comparison({ report, isKept }: { report: PhotoReport; isKept: boolean }) {
  if (isKept) return <p className="rig-check">{texts().setup.isRemembered}</p>;
  if (!report.rigCheck) return null;
  const [judgment, ...more] = rigNotes(report.rigCheck);
  return (
    <p className="rig-check">
      <strong>{judgment}</strong> {more.join(' ')}
    </p>
  );
}
