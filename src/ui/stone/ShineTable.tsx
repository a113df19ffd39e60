import { useState } from 'react';
import type { Gloss } from '../../grading/gloss';
import { shineRange } from '../../grading/shineRange';
import { texts } from '../../texts/speech';
import { shineRows } from './shineRows';

interface Props {
  readonly gloss: Gloss;
  /** Share of light that the stone itself sends back, 0 to 1; null when it was not seen. */
  readonly bodyReflectance: number | null;
}

/** All that instruments and eyes would say of this shine; worked out once it is opened. */
export function ShineTable({ gloss, bodyReflectance }: Props) {
  const words = texts().stone;
  const [open, setOpen] = useState(false);
  return (
    <details className="shine" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.allFigures}</summary>
      {open && (
        <table>
          <caption className="fine">{words.figuresNote}</caption>
          <tbody>
            {shineRows(shineRange(gloss, bodyReflectance)).map(({ name, value, range, words: told }) => (
              <tr key={name}>
                <th scope="row">
                  {name}
                  <span className="fine">{told}</span>
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
