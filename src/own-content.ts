/** The content this house runs with, and what speaks and steps by it. */
import { join } from 'node:path';
import type { Config } from './config.ts';
import { projectRoot } from './project-root.ts';
import { readContent, type Content } from './content.ts';
import type { Step } from './conversation/answer.ts';
import { step } from './core/flow/step.ts';
import type { Say } from './delivery/render.ts';

/** The project's own flows and data, and the shop's. */
export function contentOf({ shopFolder, keepDays, forgetDays, backups }: Config): Content {
  const [flowsDir, dataDir] = [join(projectRoot, 'flows'), join(projectRoot, 'data')];
  const keeping = { messageDays: keepDays, idleDays: forgetDays, backupDays: backups.keepDays };
  return readContent({ flowsDir, dataDir, shopDir: shopFolder, keeping });
}

export const sayIn =
  ({ words }: Content): Say =>
  (language, phrase) =>
    words.say(language, phrase);

export const stepIn =
  ({ book }: Content): Step =>
  (state, event, around) =>
    step(book, state, event, around);
