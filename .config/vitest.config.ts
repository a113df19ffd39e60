import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { CHROMIUM_SWITCHES, findChromium } from './chromium.mjs';
import { enginePlugins } from './plugins/enginePlugins.ts';

const repository = fileURLToPath(new URL('..', import.meta.url));
const chromium = findChromium();

export default defineConfig({
  root: repository,
  cacheDir: `${repository}node_modules/.vitest`,
  test: {
    projects: [
      {
        extends: true,
        plugins: enginePlugins(),
        test: {
          name: 'node',
          environment: 'node',
          server: { deps: { inline: [/file-url:/] } },
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          testTimeout: 180_000,
          maxWorkers: 2,
        },
      },
      {
        extends: true,
        plugins: enginePlugins(),
        test: {
          name: 'served',
          environment: 'node',
          server: { deps: { inline: [/file-url:/] } },
          include: ['tests/browser/**/*.served.test.ts'],
          globalSetup: `${repository}tests/helpers/serveAppOnce.ts`,
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      {
        extends: true,
        plugins: [react(), ...enginePlugins()],
        worker: { format: 'es', plugins: enginePlugins },
        optimizeDeps: {
          exclude: ['onnxruntime-web', 'opencv-wasm'],
          // Named so that none is discovered, and the page reloaded, in the middle of a test.
          include: [
            'react',
            'react/jsx-runtime',
            'react/jsx-dev-runtime',
            'react-dom',
            'react-dom/client',
            'dexie',
            'zustand',
            'zustand/vanilla',
            'munkres',
            'ulid',
            'wouter',
            'libheif-js/libheif-wasm/libheif.js',
          ],
        },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.browser.test.{ts,tsx}'],
          setupFiles: `${repository}tests/helpers/ownServerOnly.ts`,
          testTimeout: 120_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            viewport: { width: 390, height: 844 },
            provider: playwright({
              launchOptions: { args: CHROMIUM_SWITCHES, ...(chromium ? { executablePath: chromium } : {}) },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
});
