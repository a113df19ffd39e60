import { expect, it } from 'vitest';
import convolution from '../golden/convolution.json';
import { largestDifference } from '../helpers/largestDifference';
import { golden } from '../helpers/openCvGolden';
import { askEngines } from './enginesPage/askEngines';

// Sources: OpenCV 4.6 and SciPy 1.10, tests/golden/opencv.py and convolution.py.
it('runs OpenCV and the neural engine in a module worker, with the same values as in Node', async () => {
  const { resized, features } = await askEngines();
  expect(largestDifference(resized, golden.areaResize.gray7x5)).toBeLessThan(golden.tolerance);
  expect(largestDifference(features, convolution.features)).toBeLessThan(convolution.tolerance);
});
