/** The entrance: reads the settings, starts, stops on a signal. */
import { makeService } from './service.ts';
import { systemClock } from './clock.ts';
import { readConfig } from './config.ts';
import { errorFields, makeLog } from './log.ts';
import { requireUtc, toldPlainly } from './start.ts';

try {
  requireUtc();
  const config = readConfig(process.env);
  const log = makeLog(config.log);
  process.on('uncaughtException', (error) => {
    log.error('stopped by an error nobody expected', errorFields(error));
    process.exit(1);
  });
  const service = makeService(config, systemClock, log);
  const stop = (): void => void service.stop().then(() => process.exit(0));
  await service.start();
  process.once('SIGTERM', stop).once('SIGINT', stop);
  process.stdout.write(`${service.address()}\n`);
  const code = await service.shopCode();
  if (code !== null) process.stderr.write(`${code}\n`);
} catch (error) {
  process.stderr.write(`${toldPlainly(error)}\n`);
  process.exit(1);
}
