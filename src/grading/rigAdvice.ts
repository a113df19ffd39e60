import { distanceAdvice } from './distanceAdvice';
import { exposureAdvice } from './exposureAdvice';
import { focusAdvice } from './focusAdvice';
import { lampAdvice } from './lampAdvice';
import type { Advice, RigNumbers } from './rigNumbers';

/** What physics says about lamp and camera, one entry for each thing that can be set. */
export function rigAdvice(rig: RigNumbers): Advice[] {
  return [lampAdvice(rig), exposureAdvice(rig), distanceAdvice(rig), focusAdvice(rig)];
}
