import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { FlawPlanes } from '../../src/analysis/flawPlanes';
import { cuts, flawShares } from '../../src/analysis/flawShares';
import type { FlawNet } from '../../src/vision/openFlawNet';

const sides = fc.integer({ min: 1, max: 60 }).map((n) => 32 * n);

it('covers every side once with the counting parts of its tiles', () => {
  fc.assert(
    fc.property(sides, (side) => {
      const all = cuts(side);
      expect(all[0]!.from).toBe(0);
      expect(all[all.length - 1]!.to).toBe(side);
      for (const [i, { start, size, from, to }] of all.entries()) {
        expect(from).toBeGreaterThanOrEqual(start);
        expect(to).toBeLessThanOrEqual(start + size);
        expect(size % 32).toBe(0);
        if (i > 0) expect(from).toBe(all[i - 1]!.to);
      }
    }),
  );
});

it('joins tiles to the same map as one piece gives', async () => {
  const [rows, columns] = [704, 1120];
  const data = Float32Array.from({ length: 6 * rows * columns }, (_, i) => (i * 7919) % 1013);
  // Stands in for the network: every place tells the first plane's value above it, so that any mistake in joining shows.
  const net: FlawNet = {
    shares: async (planes, r, c) =>
      Float32Array.from({ length: (6 * r * c) / 4 }, (_, i) => {
        const place = i % ((r * c) / 4);
        return (
          planes[2 * Math.floor(place / (c / 2)) * c + 2 * (place % (c / 2))]! + Math.floor(i / ((r * c) / 4))
        );
      }),
  };
  const shares = await flawShares(net, { data, rows, columns } as FlawPlanes);
  expect(Buffer.from(shares.buffer).equals(Buffer.from((await net.shares(data, rows, columns)).buffer))).toBe(
    true,
  );
});
