import type { Plugin } from 'vite';
import { fileUrlsInNode } from './fileUrlsInNode.ts';
import { heifWithoutNode } from './heifWithoutNode.ts';
import { openCvFactory } from './openCvFactory.ts';

/** What lets `src/vision` open its engines from the same code in a page, a worker and Node. */
export function enginePlugins(): Plugin[] {
  return [openCvFactory(), heifWithoutNode(), fileUrlsInNode()];
}
