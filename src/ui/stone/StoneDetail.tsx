import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { PhotoReport, StoneReport } from '../../analysis/report';
import type { StoneGrade } from '../../grading/gradeStone';
import { lengthNumber, lengthWords } from '../../texts/measures';
import { texts } from '../../texts/speech';
import { usePhotos } from '../stores';
import { stoneButtonId } from '../tray/StoneButtons';
import { FlawPart } from './FlawPart';
import { GlossPart } from './GlossPart';
import { KnownStone } from './KnownStone';
import { SmoothnessPart } from './SmoothnessPart';
import { VerdictPart } from './VerdictPart';

interface Props {
  readonly stone: StoneReport;
  readonly grade: StoneGrade;
  readonly report: PhotoReport;
  readonly bitmap: ImageBitmap | null;
}

/** Everything known of one stone: first what to do and why, then what was measured. */
export function StoneDetail({ stone, grade, report, bitmap }: Props) {
  const selectStone = usePhotos((state) => state.selectStone);
  const { stone: words, verdicts } = texts();
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    title.current?.focus({ preventScroll: true });
    title.current?.closest('.tray-side')?.scrollTo(0, 0);
    document.getElementById('tray-picture')?.scrollIntoView({ block: 'start' });
  }, []);

  const close = () => {
    selectStone(null);
    document.getElementById(stoneButtonId(stone.id))?.focus({ preventScroll: true });
  };
  const step = (by: number) => {
    const count = report.stones.length;
    const place = report.stones.findIndex(({ id }) => id === stone.id);
    selectStone(report.stones[(place + by + count) % count]?.id ?? null);
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape') close();
    else if (event.key === 'ArrowLeft') step(-1);
    else if (event.key === 'ArrowRight') step(1);
    else return;
    event.preventDefault();
  };

  return (
    <section
      className="detail"
      data-action={grade.verdict.action}
      aria-labelledby="detail-title"
      onKeyDown={press}
    >
      <header className="detail-head">
        <h2 id="detail-title" ref={title} tabIndex={-1}>
          {verdicts.stone(stone.id)}{' '}
          <span className="detail-size">
            {lengthNumber(stone.lengthMm, 0)} × {lengthWords(stone.widthMm, 0)}
          </span>
        </h2>
        <button
          type="button"
          className="pebble pebble-plain"
          aria-label={words.previous}
          onClick={() => step(-1)}
        >
          ‹
        </button>
        <button type="button" className="pebble pebble-plain" aria-label={words.next} onClick={() => step(1)}>
          ›
        </button>
        <button type="button" className="button" onClick={close}>
          {words.close}
        </button>
      </header>
      <VerdictPart verdict={grade.verdict} />
      <KnownStone place={stone.id} />
      <FlawPart stone={stone} mmPerPx={report.mmPerPx} bitmap={bitmap} />
      <GlossPart
        gloss={grade.gloss}
        gu60AtMost={grade.gu60AtMost}
        further={grade.furtherGloss}
        skin={grade.skin}
        highlight={stone.highlight}
        withheld={stone.glossWithheld ?? false}
      />
      <SmoothnessPart grade={grade} inspectedCm2={stone.inspectedCm2} />
    </section>
  );
}
