import { useCallback } from 'react';
import type { PlanSettings } from '../../recipes/planSettings';
import { useSettings } from '../stores';

/** Recipes, stock and wash-out as the owner keeps them, the units, and how to change a part. */
export function usePlanSettings() {
  const plan = useSettings((state) => state.plan);
  const units = useSettings((state) => state.units);
  const change = useSettings((state) => state.change);
  const changePlan = useCallback(
    (part: Partial<PlanSettings>) => change({ plan: { ...plan, ...part } }),
    [change, plan],
  );
  return { plan, units, changePlan };
}
