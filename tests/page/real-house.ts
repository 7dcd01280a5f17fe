/** The real house behind the page, on a port and in a folder of its own. */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeService } from '../../src/app.ts';
import { systemClock } from '../../src/clock.ts';
import { projectRoot, readConfig } from '../../src/config.ts';
import { makeLog } from '../../src/log.ts';

export interface RealHouse {
  address(): string;
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
    async stop() {
      await service.stop();
      rmSync(folder, { recursive: true });
    },
  };
}
