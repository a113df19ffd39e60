/**
 * Draws the icons of the installed app in the colors of src/styles/theme.css: `node .config/drawIcons.mjs`.
 *
 * A polished stone on wet sand: `stone` with round corners and room around it, `full` to every edge with the stone
 * inside the circle that devices may cut out (80 % of the width, W3C Web App Manifest, "safe zone").
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const FOLDER = new URL('../src/public/icons/', import.meta.url);
const theme = readFileSync(new URL('../src/styles/theme.css', import.meta.url), 'utf8');

/** A color of the light theme, which comes first. */
function color(name) {
  const found = new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(theme)?.[1];
  if (!found) throw new Error(`theme.css has no color "${name}".`);
  return found;
}

/** Outline of the stone, within 40 × 32. */
const STONE = 'M3 21C2 13 9 5 19 3.5C28 2 37 8 38 16C39 25 31 30 20 30C10 30 4 28 3 21Z';

/** A picture of 512 × 512 with the stone in the middle. */
function drawing({ scale, corner }) {
  const [left, top] = [256 - 20.5 * scale, 256 - 16.8 * scale];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 512 512"><title>Glintgrade</title>
<rect width="512" height="512" rx="${corner}" fill="${color('ground')}"/>
<g transform="translate(${left} ${top}) scale(${scale})">
<clipPath id="s"><path d="${STONE}"/></clipPath>
<path fill="${color('line')}" transform="translate(0.6 1.6)" d="${STONE}"/>
<path fill="${color('strong')}" d="${STONE}"/>
<g clip-path="url(#s)" fill="none">
<path stroke="${color('back-to-coarse')}" stroke-width="2" d="M0 22C12 29 28 28 42 17"/>
<path stroke="${color('line')}" stroke-width="0.8" d="M0 19.4C12 26.4 28 25.4 42 14.4"/>
</g>
<path fill="none" stroke="${color('surface')}" stroke-width="2.6" stroke-linecap="round" d="M9 16C10.5 11.5 14 8.5 18.5 7.6"/>
</g></svg>
`;
}

mkdirSync(FOLDER, { recursive: true });
const stone = drawing({ scale: 11.4, corner: 104 });
const full = drawing({ scale: 9.4, corner: 0 });
writeFileSync(new URL('stone.svg', FOLDER), stone);
for (const [name, picture, px] of [
  ['stone-192', stone, 192],
  ['stone-512', stone, 512],
  ['full-180', full, 180],
  ['full-192', full, 192],
  ['full-512', full, 512],
]) {
  const png = sharp(Buffer.from(picture), { density: 144 }).resize(px, px);
  await png.png({ palette: true, effort: 10 }).toFile(fileURLToPath(new URL(`${name}.png`, FOLDER)));
}
