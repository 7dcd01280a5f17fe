/** The built scripts, styles and mark of the page, read once at start, compressed when first asked for, and served from memory. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { lazily } from '../../core/lazily.ts';

export interface Asset {
  readonly type: string;
  readonly plain: Buffer;
  readonly brotli: () => Buffer;
  readonly gzip: () => Buffer;
}

export interface Assets {
  readonly scripts: readonly string[];
  readonly styles: readonly string[];
  get(name: string): Asset | null;
}

interface ManifestEntry {
  readonly file: string;
  readonly isEntry?: boolean;
}

const types: Readonly<Record<string, string>> = {
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
};

/** Throws when the page has not been built. */
export function readAssets(folder: string): Assets {
  const manifest = join(folder, 'manifest.json');
  if (!existsSync(manifest)) throw new Error(`The page is not built: ${manifest} is missing. Run: npm run build`);
  const entries = Object.values(JSON.parse(readFileSync(manifest, 'utf8')) as Record<string, ManifestEntry>);
  const names = readdirSync(folder).filter((name) => types[extname(name)] !== undefined);
  const files = new Map(names.map((name) => [name, readAsset(join(folder, name))]));
  const first = entries.filter((one) => one.isEntry === true).map((one) => one.file);
  return {
    scripts: first.filter((file) => file.endsWith('.js')),
    styles: first.filter((file) => file.endsWith('.css')),
    get: (name) => files.get(name) ?? null,
  };
}

function readAsset(path: string): Asset {
  const plain = readFileSync(path);
  const type = types[extname(path)] ?? 'application/octet-stream';
  return {
    type,
    plain,
    brotli: lazily(() => brotliCompressSync(plain)),
    gzip: lazily(() => gzipSync(plain, { level: 9 })),
  };
}
