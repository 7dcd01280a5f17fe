/** Builds the page into dist/page: hashed names, and a manifest the server reads. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));

export default defineConfig({
  root,
  base: '/assets/',
  publicDir: false,
  // The page's own language has no JSX runtime of its own to find: name it.
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: fileURLToPath(new URL('../../../../dist/page', import.meta.url)),
    emptyOutDir: true,
    assetsDir: '',
    assetsInlineLimit: 0,
    manifest: 'manifest.json',
    modulePreload: false,
    target: 'es2022',
    rolldownOptions: { input: { sheet: fileURLToPath(new URL('main.tsx', import.meta.url)) } },
  },
});
