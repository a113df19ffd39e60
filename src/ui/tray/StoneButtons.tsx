import type { KeyboardEvent } from 'react';
import { stoneBox } from '../../picture/stoneBox';
import type { GradedPhoto } from '../../state/gradePhoto';
import { texts } from '../../texts/speech';
import { usePhotos } from '../stores';
import { neighborStone } from './neighborStone';

interface Props {
  readonly graded: GradedPhoto;
  readonly onReveal: (x: number, y: number) => void;
}

/** Id of the button over a stone, to give the focus back to. */
export const stoneButtonId = (stone: number) => `stone-${stone}`;

/** One button over each stone for keyboard and screen reader: arrows go from stone to stone, Enter opens one. */
export function StoneButtons({ graded, onReveal }: Props) {
  const { report, grades } = graded;
  const selected = usePhotos((state) => state.selectedStone);
  const selectStone = usePhotos((state) => state.selectStone);
  const { tray, verdicts } = texts();
  const stop = selected ?? report.stones[0]?.id ?? null;

  const walk = (event: KeyboardEvent, from: number) => {
    const next = neighborStone(report.stones, from, event.key);
    if (next === null) return;
    event.preventDefault();
    document.getElementById(stoneButtonId(next))?.focus({ preventScroll: true });
  };

  return (
    <nav className="stone-buttons" aria-label={tray.stonesInTray}>
      {report.stones.map((stone) => {
        const box = stoneBox(stone.outline);
        const action = grades.find(({ id }) => id === stone.id)?.verdict.action;
        const share = (value: number, whole: number) => `${(100 * value) / whole}%`;
        return (
          <button
            key={stone.id}
            id={stoneButtonId(stone.id)}
            type="button"
            className="stone-button"
            tabIndex={stone.id === stop ? 0 : -1}
            aria-pressed={stone.id === selected}
            aria-label={tray.stoneAndVerdict(
              verdicts.stone(stone.id),
              action === undefined ? null : verdicts.actions[action],
            )}
            style={{
              left: share(box.column, report.widthPx),
              top: share(box.row, report.heightPx),
              width: share(box.width, report.widthPx),
              height: share(box.height, report.heightPx),
            }}
            onClick={() => selectStone(stone.id)}
            onFocus={() => onReveal(stone.center[1] / report.widthPx, stone.center[0] / report.heightPx)}
            onKeyDown={(event) => walk(event, stone.id)}
          />
        );
      })}
    </nav>
  );
}
