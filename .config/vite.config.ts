import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { contentSecurity, ISOLATION_HEADERS } from './plugins/contentSecurity.ts';
import { enginePlugins } from './plugins/enginePlugins.ts';
import { offlineCopy } from './plugins/offlineCopy.ts';

const repository = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root: `${repository}src`,
  cacheDir: `${repository}node_modules/.vite`,
  base: './',
  plugins: [react(), ...enginePlugins(), contentSecurity(), offlineCopy()],
  worker: { format: 'es', plugins: enginePlugins },
  optimizeDeps: { exclude: ['onnxruntime-web', 'opencv-wasm'] },
  server: { fs: { allow: [repository] }, headers: ISOLATION_HEADERS },
  build: {
    outDir: `${repository}dist`,
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1000,
  },
});
