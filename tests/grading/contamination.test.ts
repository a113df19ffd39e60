import { expect, it } from 'vitest';
import { contamination } from '../../src/grading/contamination';
import type { MeasuredFlaw } from '../../src/grading/measuredStone';
import { measuredStone } from '../helpers/measuredStone';

const scratch = (widthMm?: number, confidence = 0.9): MeasuredFlaw => ({
  kind: 'scratch',
  lengthMm: 4,
  confidence,
  ...(widthMm === undefined ? {} : { widthMm }),
});

/** A tray of ten stones, the first of them scratched three times each. */
function tray(scratchedStones: number, flaw = scratch(0.07)) {
  return Array.from({ length: 10 }, (_, i) =>
    measuredStone({ id: i + 1, flaws: i < scratchedStones ? [flaw, flaw, flaw] : [] }),
  );
}

it('says nothing of a tray without scratches, nor where the step itself scratches', () => {
  expect(contamination(tray(0), 'polish', null)).toBeNull();
  expect(contamination(tray(5), 'coarse', null)).toBeNull();
  expect(contamination(tray(5), 'medium', null)).toBeNull();
});

it('names the grit when many stones are scratched, and sends the whole batch back behind it', () => {
  const found = contamination(tray(3), 'polish', null);
  expect(found).toMatchObject({
    scratched: [1, 2, 3],
    isBatch: true,
    origin: 'coarse',
    backTo: 'medium',
  });
  expect(found?.sentence).toBe(
    '3 of 10 stones are freshly scratched (1, 2, 3): 60/90 silicon carbide or the like has likely got into this batch. Wash out barrel, lid and every stone, also those without a scratch in view, throw away the slurry and the charge, and go back to the medium step.',
  );
});

it('sends thinner scratches less far back', () => {
  expect(contamination(tray(3, scratch(0.02)), 'polish', null)).toMatchObject({
    origin: 'medium',
    backTo: 'fine',
  });
});

it('goes one step back when no width was measured', () => {
  const found = contamination(tray(2, scratch()), 'prepolish', null);
  expect(found).toMatchObject({ origin: null, backTo: 'fine', isBatch: true });
  expect(found?.sentence).toContain('coarser grit has likely got into this batch');
});

it('leaves open what scratched a single stone', () => {
  const found = contamination(tray(1), 'polish', null);
  expect(found?.isBatch).toBe(false);
  expect(found?.sentence).toBe(
    'Only stone 1 of 10 shows fresh scratches. Pale and busy stones hide theirs: look at some with a loupe. If they are scratched too, grit has got into the batch; if not, a sharp edge or a harder neighbor did it to this one.',
  );
});

it('blames the batch from one stone in ten on, two at least', () => {
  const many = (scratched: number) =>
    Array.from({ length: 30 }, (_, i) =>
      measuredStone({ id: i + 1, flaws: i < scratched ? [scratch(0.07), scratch(0.07)] : [] }),
    );
  expect(contamination(many(2), 'polish', null)?.isBatch).toBe(false);
  expect(contamination(many(2), 'polish', null)?.sentence).toContain('Only stones 1 and 2 of 30 show');
  expect(contamination(many(3), 'polish', null)?.isBatch).toBe(true);
});

it('lets doubtful scratches pass', () => {
  expect(contamination(tray(5, scratch(0.07, 0.3)), 'polish', null)).toBeNull();
});
