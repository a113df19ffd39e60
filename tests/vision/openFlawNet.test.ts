import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { FLAW_CLASSES, openFlawNet } from '../../src/vision/openFlawNet';
import golden from '../golden/flawModel.json';

const net = await openFlawNet();

/** The picture that tests/golden/flawModel.py tells by formula. */
function formulaPlanes(side: number): Float32Array {
  const planes = new Float32Array(6 * side * side);
  for (let r = 0; r < side; r++) {
    for (let c = 0; c < side; c++) {
      const d2 = (r - 30) ** 2 + (c - 26) ** 2;
      const dent = 1 + (0.35 * (((r - 30) * 0.6 - (c - 26) * 0.8) / 5) - 0.15) * Math.exp(-((d2 / 40) ** 4));
      const mask = (r - 32) ** 2 + (c - 32) ** 2 < 900 ? 1 : 0;
      const colors = [0, 1, 2].map((k) => (1 + 0.1 * Math.sin(r / 5) * Math.cos(c / 7) + 0.05 * k) * dent);
      [...colors, mask, 0.4, 0.3].forEach((value, k) => {
        planes[k * side * side + r * side + c] = value;
      });
    }
  }
  return planes;
}

// Source: PyTorch with the weights the file was exported from, tests/golden/flawModel.py.
it('gives what PyTorch gives', async () => {
  const shares = await net.shares(formulaPlanes(64), 64, 64);
  const [, classes, rows, columns] = golden.outputShape as [number, number, number, number];
  expect(shares).toHaveLength(classes * rows * columns);
  const apart = golden.places.flatMap(([r, c], i) =>
    golden.shares[i]!.map((share, k) => Math.abs(share - shares[(k * rows + r!) * columns + c!]!)),
  );
  expect(Math.max(...apart)).toBeLessThan(golden.tolerance);
});

it('is the file whose checksum the golden values and models/README.md name', async () => {
  const bytes = await readFile(new URL('../../models/stone-flaws.onnx', import.meta.url));
  const sum = createHash('sha256').update(bytes).digest('hex');
  const readme = await readFile(new URL('../../models/README.md', import.meta.url), 'utf8');
  expect(golden.modelSha256).toBe(sum);
  expect(readme).toContain(sum);
  expect(bytes.length).toBeLessThanOrEqual(2_000_000);
});

it('gives shares that add up to one', async () => {
  const shares = await net.shares(formulaPlanes(64), 64, 64);
  for (let place = 0; place < 1024; place += 37) {
    const sum = FLAW_CLASSES.reduce((total, _, k) => total + shares[k * 1024 + place]!, 0);
    expect(sum).toBeCloseTo(1, 4);
  }
});

it('refuses planes that do not fit their size', async () => {
  await expect(net.shares(new Float32Array(10), 64, 64)).rejects.toThrow();
});
