import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { contentSecurity } from './plugins/contentSecurity.ts';
import { enginePlugins } from './plugins/enginePlugins.ts';
import { licenseTexts } from './plugins/licenseTexts.ts';
import { offlineCopy } from './plugins/offlineCopy.ts';

const licenses = licenseTexts();
const repository = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root: `${repository}src`,
  cacheDir: `${repository}node_modules/.vite`,
  base: './',
  plugins: [react(), ...enginePlugins(), contentSecurity(), licenses, offlineCopy()],
  worker: { format: 'es', plugins: () => [...enginePlugins(), licenses] },
  optimizeDeps: { exclude: ['onnxruntime-web', 'opencv-wasm'] },
  server: { fs: { allow: [repository] } },
  build: {
    outDir: `${repository}dist`,
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1000,
    // What the page starts with in two files: many small ones take longer on a slow line.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'react', tags: ['$initial'], test: /node_modules[\\/](react|react-dom|scheduler)[\\/]/ },
            { name: 'first', tags: ['$initial'] },
            { name: 'parts', test: /[\\/]src[\\/](picture|recipes|ui)[\\/]/, minShareCount: 2 },
          ],
        },
      },
    },
  },
});
