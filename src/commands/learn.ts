/** `npm run learn`: learns what evidence weighs anew, and writes data/reading/{weights,common-words,shop-talk}.txt. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../project-root.ts';
import { learnt, learntSentences } from './learnt.ts';

const dataDir = join(projectRoot, 'data');
const sentences = learntSentences.map((file) => join(projectRoot, 'tests', 'reading', file));
const { examples, weights, common, shopTalk } = learnt(dataDir, sentences);

function write(name: string, text: string): void {
  writeFileSync(join(dataDir, 'reading', name), text);
}
write('weights.txt', weights);
write('common-words.txt', `${common.join('\n')}\n`);
write('shop-talk.txt', `${shopTalk.join('\n')}\n`);
console.log(`Learnt from ${examples} sentences; what changed: git diff --stat data/reading`);
