import { useState } from 'react';
import type { Gloss } from '../../grading/gloss';
import { shineRange } from '../../grading/shineRange';
import { shineRows } from './shineRows';

interface Props {
  readonly gloss: Gloss;
  /** Share of light that the stone itself sends back, 0 to 1; null when it was not seen. */
  readonly bodyReflectance: number | null;
}

/** All that instruments and eyes would say of this shine; worked out once it is opened. */
export function ShineTable({ gloss, bodyReflectance }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details className="shine" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>All figures of its shine</summary>
      {open && (
        <table>
          <caption className="fine">
            What instruments would read on a flat of the same finish, estimated from this photo.
          </caption>
          <tbody>
            {shineRows(shineRange(gloss, bodyReflectance)).map(({ name, value, range, words }) => (
              <tr key={name}>
                <th scope="row">
                  {name}
                  <span className="fine">{words}</span>
                </th>
                <td>
                  {value ?? '–'}
                  {range !== null && <span className="fine">{range}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}
