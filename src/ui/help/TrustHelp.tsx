import { Rich } from '../parts/Rich';
import { HelpHeading } from './HelpHeading';
import { NOT_REACHED, REACHED, type TrustFigure } from './trustFigures';
import { useHelpTexts } from './useHelpTexts';

/** What it misses and what it can be trusted with, the worst first. */
export function TrustHelp() {
  const { trust } = useHelpTexts();
  return (
    <section aria-labelledby="help-trust">
      <HelpHeading id="trust" />
      <p>
        <Rich text={trust.intro} />
      </p>
      <h4>{trust.missed}</h4>
      <Figures of={NOT_REACHED} />
      <h4>{trust.reached}</h4>
      <Figures of={REACHED} />
      <p>{trust.outro}</p>
    </section>
  );
}

function Figures({ of }: { of: readonly TrustFigure[] }) {
  const texts = useHelpTexts();
  return (
    <ul className="help-list">
      {of.map(({ row, said }) => (
        <li key={row}>{said(texts)}</li>
      ))}
    </ul>
  );
}
