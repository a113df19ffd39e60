import { Link } from 'wouter';
import { texts } from '../../texts/speech';

interface Props {
  /** Part of the help page. */
  readonly to: 'verdicts' | 'flaws' | 'finishes' | 'numbers' | 'trust';
}

/** Leads from what was measured to where it is explained. */
export function HelpLink({ to }: Props) {
  const word = texts().page.helpOn[to];
  return (
    <Link href={`/help/${to}`} className="help-link" aria-label={word} title={word}>
      <span aria-hidden="true">?</span>
    </Link>
  );
}
