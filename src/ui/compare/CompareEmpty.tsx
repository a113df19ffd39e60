import { COMPARE_WHAT, type CompareWhat } from '../../compare/compareBy';
import { texts } from '../../texts/speech';

/** Nothing to compare yet: says what must be kept first. */
export function CompareEmpty({ what }: { what: CompareWhat | null }) {
  const words = texts().compare;
  return (
    <div className="compare-empty">
      <p>{what === null ? words.nothingYet : words.noneTells(what)}</p>
      {what === null && (
        <dl className="compare-needed">
          {COMPARE_WHAT.map((one) => (
            <div key={one}>
              <dt>{words.what[one]}</dt>
              <dd>{words.needed[one]}</dd>
            </div>
          ))}
        </dl>
      )}
      <p className="fine">{words.fiveOfAKind}</p>
    </div>
  );
}
