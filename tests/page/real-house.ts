/** The real house behind the page, on a port and in a folder of its own. */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makeService } from '../../src/service.ts';
import { systemClock } from '../../src/clock.ts';
import { databaseFile, readConfig } from '../../src/config.ts';
import { projectRoot } from '../../src/project-root.ts';
import { makeLog } from '../../src/log.ts';

export interface RealHouse {
  address(): string;
  /** The next lesson there is. */
  lesson(): string;
  /** What makes who writes it the shopkeeper. */
  shopCode(): Promise<string>;
  stop(): Promise<void>;
}

export async function openRealHouse(): Promise<RealHouse> {
  if (!existsSync(join(projectRoot, 'dist/page/manifest.json')))
    throw new Error('the page is not built: npm run build');
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-page-'));
  const config = readConfig({
    NINTHPOUR_FOLDER: folder,
    NINTHPOUR_PORT: '0',
    NINTHPOUR_LOG: 'silent',
    NINTHPOUR_BACKUP_HOURS: '0',
  });
  const service = makeService(config, systemClock, makeLog('silent'));
  await service.start();
  return {
    address: () => service.address(),
    lesson() {
      const rows = new Database(databaseFile(config), { readonly: true });
      const next = rows.prepare<[], { id: string }>('SELECT id FROM lesson ORDER BY starts_at LIMIT 1').get();
      rows.close();
      return next?.id ?? 'none';
    },
    async shopCode() {
      return /[A-Z0-9]{4}-[A-Z0-9]{4}/.exec((await service.shopCode()) ?? '')?.[0] ?? 'none';
    },
    async stop() {
      await service.stop();
      rmSync(folder, { recursive: true });
    },
  };
}
