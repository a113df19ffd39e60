import { Tensor } from 'onnxruntime-web/wasm';
import { areaResize } from '../../../src/vision/areaResize';
import { openOpenCv } from '../../../src/vision/openCv';
import { openOnnx } from '../../../src/vision/openOnnx';
import convolution from '../../golden/convolution.json';
import modelUrl from '../../golden/convolution.onnx?url';
import { GRAY } from '../../helpers/openCvGolden';
import type { EnginesAnswer } from './askEngines';

async function run(): Promise<EnginesAnswer> {
  const resized = areaResize(await openOpenCv(), GRAY, 7, 5).data;
  const session = await openOnnx(modelUrl);
  const picture = new Tensor('float32', Float32Array.from(convolution.picture), convolution.shape);
  const { features } = await session.run({ picture });
  if (!features) throw new Error('The network gave no features.');
  return {
    resized: [...resized],
    features: [...(features.data as Float32Array)],
    isIsolated: globalThis.crossOriginIsolated,
  };
}

run().then(
  (answer) => self.postMessage(answer),
  (error: unknown) => self.postMessage({ failed: String(error) }),
);
