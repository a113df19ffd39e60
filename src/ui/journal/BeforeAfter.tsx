import { type CSSProperties, useId, useState } from 'react';
import type { StoneCheck } from '../../history/batchHistory';
import { texts } from '../../texts/speech';
import { StonePicture } from './StonePicture';

/** The stone at its first and at its last check, one over the other: a slider uncovers the later one. */
export function BeforeAfter({ before, after }: { before: StoneCheck; after: StoneCheck }) {
  const [share, setShare] = useState(50);
  const id = useId();
  const words = texts().journal.beforeAfter;
  return (
    <section className="before-after" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{words.title}</h3>
      <div className="before-after-stage" style={{ '--share': `${share}%` } as CSSProperties}>
        <div className="before-after-before">
          <StonePicture face={before.faces[0]} label={words.onDay(before.check.day)} sidePx={480} />
        </div>
        <div className="before-after-after">
          <StonePicture face={after.faces[0]} label={words.onDay(after.check.day)} sidePx={480} />
        </div>
      </div>
      <label htmlFor={id} className="before-after-days">
        <span>{before.check.day}</span>
        <span>{after.check.day}</span>
      </label>
      <input
        id={id}
        type="range"
        min="0"
        max="100"
        value={share}
        aria-valuetext={words.share(share)}
        onChange={(event) => setShare(event.target.valueAsNumber)}
      />
    </section>
  );
}
