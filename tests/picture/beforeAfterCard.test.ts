import sharp from 'sharp';
import { expect, it } from 'vitest';
import { beforeAfterCard } from '../../src/picture/beforeAfterCard';
import { HARD_NAMES, inventedCard } from './inventedKeepsake';

it('draws the card with days, steps, weeks, sizes and gloss', () => {
  const { svg } = beforeAfterCard(inventedCard);
  for (const words of [
    ...['Stone 3', 'agate, the brook', 'March 9, 2026', 'November 20, 2026', 'after coarse, 32 mm long'],
    ...['after polish', '11 weeks in coarse', '14 checks', 'coarse → polish', 'ceiling 96', '10 mm'],
    ...['then 3 (2.7 to 3.3)', 'now 88 (79 to 97)'],
  ]) {
    expect(svg).toContain(words);
  }
  expect(svg.match(/data-star/g)).toHaveLength(1);
});

it('draws both stones of a card to one scale, inside it', () => {
  const { places, widthPx } = beforeAfterCard(inventedCard);
  expect(places).toHaveLength(2);
  expect(places[0]!.scale).toBe(places[1]!.scale);
  expect(places[0]!.turnDeg).toBe(40);
  expect(places[0]!.x).toBeLessThan(widthPx / 2);
  expect(places[1]!.x).toBeGreaterThan(widthPx / 2);
});

it('says on the card when a photo carried no number, and leaves out weeks that are not known', () => {
  const { svg } = beforeAfterCard({
    ...inventedCard,
    after: { ...inventedCard.after, gloss: null },
    weeksInCoarse: null,
  });
  expect(svg).toContain('now: no number');
  expect(svg).not.toContain('data-when="now"');
  expect(svg).not.toContain('in coarse');
});

it('prints: the ground is nearly white, and where a stone goes it is darker', async () => {
  const { svg, places, widthPx } = beforeAfterCard(inventedCard);
  const { data } = await sharp(Buffer.from(svg)).greyscale().raw().toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => data[Math.round(y) * widthPx + Math.round(x)]!;
  const ground = Array.from({ length: widthPx }, (_, x) => at(x, 300)).toSorted((a, b) => a - b);
  expect(ground[widthPx >> 1]).toBeGreaterThan(235);
  for (const { x, y } of places) expect(at(x, y)).toBeLessThan(200);
});

it.each(HARD_NAMES)('stays a picture of the same size under the name "%.40s"', async (name) => {
  const { svg, widthPx, heightPx } = beforeAfterCard({ ...inventedCard, title: name, about: [name, name] });
  const drawn = await sharp(Buffer.from(svg)).metadata();
  expect([drawn.width, drawn.height]).toEqual([widthPx, heightPx]);
});
