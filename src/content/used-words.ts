/** Which sentences are used, and which the data makes necessary: nothing is written in vain, nothing is missing. */
import type { BrewingData } from '../core/brewing/brewing-data.ts';
import { styles } from '../core/brewing/plan.ts';
import type { FlowBook } from '../core/flow/book.ts';
import { sentencesOf } from '../core/flow/outline.ts';
import { madeUpKeys } from '../core/functions/names.ts';
import { listPurposes, purposes } from '../core/lessons/reminders.ts';
import type { WordFiles } from './words.ts';

/** Sentences that code, not a flow file, says: each family of keys and where it is used. */
const ofCode: readonly string[] = [
  'page-', // channels/web
  'house-', // conversation, delivery
  'shop-told-', // app, conversation, core/functions
  'telegram-', // channels/telegram
  'mail-', // channels/mail
  'plan-', // commands/brew
  'reading-', // commands/read
  'lesson-', // core/lessons
  'said-', // core/flow
  'ladder-', // flows: show
  'flows-', // commands/flows
  'label-', // commands/labels
  'vessel-', // VESSEL()
  'family-', // FAMILY()
  'style-', // STYLE()
  ...madeUpKeys, // core/functions
];

export interface WordsInUse {
  readonly files: WordFiles;
  readonly flows: FlowBook['flows'];
  readonly brewing: BrewingData;
}

/** One line for each sentence nobody says and each that the data calls for and is not there. */
export function wrongUse({ files, flows, brewing }: WordsInUse): readonly string[] {
  const said = new Set(Object.values(flows).flatMap((flow) => sentencesOf(flow).map(({ key }) => key)));
  const isUsed = (key: string): boolean => said.has(key) || ofCode.some((prefix) => key.startsWith(prefix));
  const called = [
    ...Object.keys(brewing.vessels).map((id) => `vessel-${id}`),
    ...Object.keys(brewing.families).map((id) => `family-${id}`),
    ...styles.map((style) => `style-${style}`),
    ...[...purposes, ...listPurposes].map((purpose) => `lesson-told-${purpose}`),
  ];
  const unused = files.keys.filter((key) => !isUsed(key));
  const missing = called.filter((key) => !files.keys.includes(key));
  return [
    ...unused.map((key) => `${files.at('en', key)} expected "${key}" to be said somewhere, or not to be there`),
    ...missing.map(
      (key) =>
        `${files.at('en', key)} expected a sentence "${key}", which ${key.startsWith('lesson-') ? 'a reminder' : 'the data'} calls for`,
    ),
  ];
}
