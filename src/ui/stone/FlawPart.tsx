import { useState } from 'react';
import type { StoneReport } from '../../analysis/report';
import { texts } from '../../texts/speech';
import { HelpLink } from '../parts/HelpLink';
import { useSettings } from '../stores';
import { FlawList } from './FlawList';
import { StoneCrop } from './StoneCrop';
import { sortFlaws } from './sortFlaws';

interface Props {
  readonly stone: StoneReport;
  readonly mmPerPx: number;
  readonly bitmap: ImageBitmap | null;
}

/** The stone enlarged with its flaws, and their list; those the photo is not sure of only on request. */
export function FlawPart({ stone, mmPerPx, bitmap }: Props) {
  const sureFrom = useSettings((state) => state.limits[state.step].minFlawConfidence);
  const [all, setAll] = useState(false);
  const [lit, setLit] = useState<number | null>(null);
  const { sure, doubtful } = sortFlaws(stone.flaws, sureFrom);
  const words = texts().stone;
  const shown = all ? [...sure, ...doubtful] : sure;
  return (
    <>
      <StoneCrop stone={stone} flaws={shown} mmPerPx={mmPerPx} bitmap={bitmap} lit={lit} />
      <section>
        <h3>
          {words.flawsFound} <HelpLink to="flaws" />
        </h3>
        <FlawList flaws={shown} sureCount={sure.length} lit={lit} onLit={setLit} />
        {doubtful.length > 0 && (
          <button
            type="button"
            className="button button-quiet"
            aria-pressed={all}
            onClick={() => setAll(!all)}
          >
            {all ? words.hideUncertain : words.showUncertain(doubtful.length)}
          </button>
        )}
      </section>
    </>
  );
}
