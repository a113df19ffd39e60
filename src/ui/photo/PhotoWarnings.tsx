import type { PhotoReport } from '../../analysis/report';
import { type WarningCode, warningSentence } from '../../image/notice';
import { warningLetters } from '../../picture/warningLetters';
import { texts } from '../../texts/speech';

interface Props {
  readonly report: PhotoReport;
  readonly lit: WarningCode | null;
  readonly onLit: (code: WarningCode | null) => void;
}

/** What to know before trusting the photo; a tap on a warning brings out its marks in the picture. */
export function PhotoWarnings({ report, lit, onLit }: Props) {
  if (report.warnings.length === 0) return null;
  const lettered = warningLetters(report);
  return (
    <ul className="warnings" aria-label={texts().tray.warnings}>
      {report.warnings.map(({ code }) => {
        const mark = lettered.find((warning) => warning.code === code);
        if (mark === undefined) return <li key={code}>{warningSentence(code)}</li>;
        return (
          <li key={code} className="warning-marked">
            <button
              type="button"
              className="warning"
              aria-pressed={lit === code}
              onClick={() => onLit(lit === code ? null : code)}
            >
              <b className="warning-letter" aria-hidden="true">
                {mark.letter}
              </b>
              <span>{warningSentence(code)}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
