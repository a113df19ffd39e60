import { GRITS } from './grits';
import { STEPS, type Step } from './steps';

/** Width of a groove as a share of the grain that cut it: grains roll and chip, and only an edge bites. Our assumption. */
const GROOVE_SHARE = 0.35;
/** Grain of the grits whose grooves a photo can show, mm: 60/90, in the middle of both, and 220. */
const GRAIN_MM: readonly { readonly step: Step; readonly mm: number }[] = [
  { step: 'coarse', mm: Math.sqrt(grainMm('F60') * grainMm('F90')) },
  { step: 'medium', mm: grainMm('F220') },
];

function grainMm(name: string): number {
  const grit = GRITS.find((one) => one.name === name);
  if (!grit) throw new RangeError(`There is no grit ${name} in the table.`);
  return grit.micrometers / 1000;
}

/**
 * The step whose grit most likely cut grooves of that width.
 *
 * @param widthMm - Width of a groove, mm, > 0; good to a factor of two or three.
 */
export function scratchOrigin(widthMm: number): Step {
  const apart = (mm: number) => Math.abs(Math.log(widthMm / (GROOVE_SHARE * mm)));
  return [...GRAIN_MM].sort((a, b) => apart(a.mm) - apart(b.mm))[0]!.step;
}

/**
 * How far back scratched stones go: to the step that follows the grit's own, which grinds its grooves out.
 *
 * @param origin - Step whose grit cut the scratches; null when nobody knows: then the step before this one.
 * @param step - Step that the stones come from; they never go on beyond it.
 * @see Common practice: after contamination wash out, and repeat from the step that takes out the marks.
 */
export function backTo(origin: Step | null, step: Step): Step {
  const here = STEPS.indexOf(step);
  const after = origin === null ? here - 1 : STEPS.indexOf(origin) + 1;
  return STEPS[Math.max(0, Math.min(here, after))]!;
}
