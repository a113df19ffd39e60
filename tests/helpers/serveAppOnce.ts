import type { TestProject } from 'vitest/node';
import { serveBuilt } from './serveBuilt';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built app. */
    appUrl: string;
  }
}

/** Before all tests of the built app: builds and serves it; after them: stops. */
export default async function serveAppOnce(project: TestProject): Promise<() => Promise<void>> {
  const served = await serveBuilt('src');
  project.provide('appUrl', served.url);
  return served.close;
}
