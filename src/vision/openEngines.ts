import { type OpenCv, openOpenCv } from './openCv';
import { type FlawNet, openFlawNet } from './openFlawNet';

/** What an analysis runs on. */
export interface Engines {
  readonly cv: OpenCv;
  readonly flawNet: FlawNet;
}

/**
 * Opens OpenCV and the flaw network, each once.
 *
 * @throws Error if one of them cannot be loaded.
 */
export async function openEngines(): Promise<Engines> {
  const [cv, flawNet] = await Promise.all([openOpenCv(), openFlawNet()]);
  return { cv, flawNet };
}
