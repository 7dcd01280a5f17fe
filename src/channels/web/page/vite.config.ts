/** Builds the page into dist/page: hashed names, and a manifest the server reads. */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));

const config = defineConfig({
  root,
  base: '/assets/',
  publicDir: false,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact', development: false } },
  build: {
    outDir: fileURLToPath(new URL('../../../../dist/page', import.meta.url)),
    emptyOutDir: true,
    assetsDir: '',
    assetsInlineLimit: 0,
    manifest: 'manifest.json',
    modulePreload: false,
    target: 'es2022',
    rolldownOptions: { input: ['main.tsx', 'page.css'].map((file) => join(root, file)) },
  },
});

export default config;
