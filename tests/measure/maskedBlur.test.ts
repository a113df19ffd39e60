import { expect, it } from 'vitest';
import { maskedBlur } from '../../src/measure/maskedBlur';
import { drawMask } from '../helpers/drawMask';
import { drawRaster } from '../helpers/drawRaster';
import { plainBlur } from '../helpers/drawSkin';

it('does not let what lies outside into the mean', () => {
  const blurred = maskedBlur(drawRaster([2, 2, 2, 90, 90]), drawMask('###..'), 1, plainBlur);
  expect(blurred.data[2]).toBeCloseTo(2, 5);
  expect(blurred.data[3]).toBeCloseTo(2, 5);
});

it('gives the mean of the mask where nothing of it is near', () => {
  const raster = drawRaster([1, 3, ...new Array<number>(30).fill(90)]);
  const blurred = maskedBlur(raster, drawMask(`##${'.'.repeat(30)}`), 1, plainBlur);
  expect(blurred.data[31]).toBe(2);
});
