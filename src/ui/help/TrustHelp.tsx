import { HelpHeading } from './HelpHeading';
import { NOT_REACHED, REACHED, type TrustFigure } from './trustFigures';

/** What it misses and what it can be trusted with, the worst first. */
export function TrustHelp() {
  return (
    <section aria-labelledby="help-trust">
      <HelpHeading id="trust" />
      <p>
        <strong>
          Look at the marked picture before you act on it, and trust your thumb-nail over the program.
        </strong>{' '}
        Nearly all figures here come from rendered trays, where the truth is known. Real photos are harder.
      </p>
      <h4>What it does not reach</h4>
      <Figures of={NOT_REACHED} />
      <h4>What it does well</h4>
      <Figures of={REACHED} />
      <p>
        It sees only what faces the camera. Turn the stones over and photograph them again: both sides add up.
        It is a help for sorting, no gem report and no word on safety.
      </p>
    </section>
  );
}

function Figures({ of }: { of: readonly TrustFigure[] }) {
  return (
    <ul className="help-list">
      {of.map(({ said }) => (
        <li key={said}>{said}</li>
      ))}
    </ul>
  );
}
