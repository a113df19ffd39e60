import { useMemo } from 'react';
import { STEPS } from '../../grading/steps';
import type { StoneHistory } from '../../history/batchHistory';
import { learnedLimits } from '../../history/learnedLimits';
import { useSettings } from '../stores';
import { useSpeech } from '../useSpeech';

/** Limits that the owner goes by without having set them, each with a button that sets it. */
export function LimitHabits({ stones }: { stones: readonly StoneHistory[] }) {
  const limits = useSettings((state) => state.limits);
  const change = useSettings((state) => state.change);
  const speech = useSpeech();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another language says it in other words
  const habits = useMemo(
    () => STEPS.flatMap((step) => learnedLimits(stones, step, limits[step])),
    [stones, limits, speech],
  );
  return habits.map(({ step, limit, value, sentence }) => (
    <p key={`${step} ${limit}`} className="habit" role="note">
      {sentence}{' '}
      <button
        type="button"
        className="button"
        onClick={() => change({ limits: { ...limits, [step]: { ...limits[step], [limit]: value } } })}
      >
        {speech.texts.journal.batch.makeLimit}
      </button>
    </p>
  ));
}
