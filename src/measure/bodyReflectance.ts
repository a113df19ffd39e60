import { LUMINANCE_WEIGHTS } from '../image/luminance';
import type { Raster } from '../image/raster';
import type { HighlightFit } from './highlightFit';
import type { HighlightWindow } from './highlightModel';
import type { HighlightLight } from './highlightScene';

const FEWEST_PIXELS = 10;

/**
 * Share of the lamp's light that the stone itself sends back under and around its highlight: how light a stone it is.
 *
 * The rig is the white reference. A lamp of radiance L that fills the solid angle Ω, seen under the angle θ from the
 * surface normal, lights the surface with L Ω cos θ, of which a white one sends back L Ω cos θ / π in every direction.
 * So ρd = π · body / (L Ω cos θ), body being the luminance left when the highlight's lobe is taken off; the median over
 * the half of the window where the lobe is lowest. With the half-vector radius a of the lamp, Ω = 4π t / (1 + t), t = a² cos θ.
 *
 * @param stone - RGB crop in linear light, lamp white = (1, 1, 1).
 * @param window - The part of the crop in which the highlight was fitted.
 * @param fit - The fitted highlight.
 * @param light - Lamp and camera.
 * @returns 0 to 1, or null when too little of the stone is seen there. All light counts as the lamp's:
 *   where a room lights the tray too, multiply by the lamp's share of it (`RigScene.roomShare` is the rest).
 * @see Lambert's law; Shafer 1985, Color Research and Application 10(4), for highlight and body.
 */
export function bodyReflectance(
  stone: Raster,
  window: HighlightWindow,
  fit: HighlightFit,
  light: HighlightLight,
): number | null {
  const lobes = fit.lobe.filter((_, i) => window.use[i] === 1).sort();
  const middle = lobes[lobes.length >> 1] ?? 0;
  const own: number[] = [];
  for (let y = 0, i = 0; y < window.height; y++) {
    for (let x = 0; x < window.width; x++, i++) {
      if (window.use[i] !== 1 || fit.lobe[i]! > middle) continue;
      const row = Math.round(window.row + y * window.stepPx);
      const column = Math.round(window.column + x * window.stepPx);
      own.push(luminanceAt(stone, row, column) - fit.amplitude * fit.lobe[i]!);
    }
  }
  if (own.length < FEWEST_PIXELS) return null;
  own.sort((a, b) => a - b);
  const white = whiteFacing(light.lampRadiance, light.sourceSlope, light.half[2]) * light.half[2];
  return Math.min(1, Math.max(0, own[own.length >> 1]! / white));
}

/**
 * Light that a white surface facing the lamp sends back.
 *
 * @param lampRadiance - Radiance L of the lamp's image in a perfect mirror.
 * @param sourceSlope - Half-vector radius of the lamp.
 * @param cosTheta - Cosine of half the angle between lamp and camera.
 * @returns L Ω / π, in the unit of the radiance.
 */
export function whiteFacing(lampRadiance: number, sourceSlope: number, cosTheta: number): number {
  const t = sourceSlope ** 2 * cosTheta;
  return (4 * lampRadiance * t) / (1 + t);
}

function luminanceAt({ data, width }: Raster, row: number, column: number): number {
  const at = 3 * (row * width + column);
  return LUMINANCE_WEIGHTS.reduce((sum, weight, channel) => sum + weight * (data[at + channel] ?? 0), 0);
}
