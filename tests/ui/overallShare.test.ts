import { expect, it } from 'vitest';
import { STAGES } from '../../src/analysis/options';
import { texts } from '../../src/texts/speech';
import { overallShare } from '../../src/ui/photo/overallShare';

it('never goes back while the steps go by', () => {
  const shares = STAGES.flatMap((stage) => [0, 0.5, 1].map((share) => overallShare(stage, share)));
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares[0]).toBe(0);
  expect(shares.at(-1)).toBe(1);
});

it('has words of its own for every step', () => {
  expect(new Set(STAGES.map((stage) => texts().tray.stages[stage])).size).toBe(STAGES.length);
});
