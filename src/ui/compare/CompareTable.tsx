import { useState } from 'react';
import type { CompareBy, CompareWhat } from '../../compare/compareBy';
import { countWords, groupName } from '../../compare/compareWords';
import type { GroupSummary } from '../../compare/groupSummary';
import { groupWords, middleWords, sureWords } from '../../compare/groupWords';
import { texts } from '../../texts/speech';

interface Props {
  readonly groups: readonly GroupSummary[];
  readonly by: CompareBy;
  readonly what: CompareWhat;
}

/** The same figures as a table; made once it is opened. */
export function CompareTable({ groups, by, what }: Props) {
  const words = texts().compare;
  const [open, setOpen] = useState(false);
  return (
    <details className="shine compare-table" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.asTable}</summary>
      {open && (
        <table>
          <caption className="fine">{words.tableCaption(words.axis[what])}</caption>
          <tbody>
            {groups.map((group) => (
              <tr key={group.key}>
                <th scope="row">
                  {groupName(group.name, by)}
                  <span className="fine">{countWords(group, what)}</span>
                  <span className="fine">{groupWords(group, what)}</span>
                  <span className="fine">{what === 'finished' ? null : sureWords(group, what)}</span>
                </th>
                <td>{middleWords(group, what)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}
