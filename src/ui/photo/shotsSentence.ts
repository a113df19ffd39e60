/**
 * Says how a photo was merged with other shots of the scene.
 *
 * @param ratios - Light in each shot as a share of the first, the first included; at least two.
 */
export function shotsSentence(ratios: readonly number[]): string {
  const lights = ratios.slice(1).map((ratio) => `${Number(ratio.toPrecision(2))} ×`);
  const which = lights.length === 1 ? 'another shot' : `${lights.length} other shots`;
  return `Merged with ${which}, ${lights.join(' and ')} as bright.`;
}
