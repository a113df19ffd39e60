import { COMPARE_WHAT, type CompareWhat } from '../../compare/compareBy';
import { NEEDED_TERMS, WHAT_TERMS } from './compareTerms';

/** Nothing to compare yet: says what must be kept first. */
export function CompareEmpty({ what }: { what: CompareWhat | null }) {
  return (
    <div className="compare-empty">
      <p>
        {what === null
          ? 'Nothing can be compared yet. Keep every check of a batch in the journal, say which stone is which, and give stones their material and source; from then on each check adds to the comparison.'
          : `No stone kept so far tells this. It takes ${NEEDED_TERMS[what]}.`}
      </p>
      {what === null && (
        <dl className="compare-needed">
          {COMPARE_WHAT.map((one) => (
            <div key={one}>
              <dt>{WHAT_TERMS[one]}</dt>
              <dd>{NEEDED_TERMS[one]}</dd>
            </div>
          ))}
        </dl>
      )}
      <p className="fine">Five stones of a kind are needed before anything is claimed of them.</p>
    </div>
  );
}
