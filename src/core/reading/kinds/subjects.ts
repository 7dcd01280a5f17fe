/** What the words of a text are about ("goldfish" and 金魚: an animal), by data/reading/subjects.yaml. */
import { plainText } from '../../teas/plain-text.ts';
import { cueText } from '../cues/cues.ts';
import { oneChinese } from '../typed/one-chinese.ts';

export type Subjects = { readonly [subject: string]: readonly string[] };
/** The subjects of a text (oneChinese of cueText), each once. */
export type SubjectFinder = (text: string) => string[];

/** Words a phrase may have, and characters a Han word may. */
const longestPhrase = 3;
const longestHan = 5;
const shortestStem = 3;

export function makeSubjectFinder(subjects: Subjects): SubjectFinder {
  const whole = new Map<string, string>();
  const stems = new Map<string, string>();
  const beginsPhrase = new Set<string>();
  for (const [subject, words] of Object.entries(subjects)) {
    for (const word of words) {
      const plain = oneChinese(cueText(plainText(word).plain));
      const stem = plain.endsWith('*');
      (stem ? stems : whole).set(stem ? plain.slice(0, -1) : plain, subject);
      if (plain.includes(' ')) beginsPhrase.add(plain.slice(0, plain.indexOf(' ')));
    }
  }
  const ofWord = (word: string): string | undefined =>
    whole.get(word) ?? (word.endsWith('s') ? whole.get(word.slice(0, -1)) : undefined) ?? byStem(word);
  const byStem = (word: string): string | undefined => {
    for (let length = word.length; length >= shortestStem; length--) {
      const subject = stems.get(word.slice(0, length));
      if (subject !== undefined) return subject;
    }
    return undefined;
  };
  const latin = (text: string): string[] => {
    const words = text.match(/[a-z]+|\$/g) ?? [];
    return words.flatMap((word, i) => {
      const found = [ofWord(word)];
      const longest = beginsPhrase.has(word) ? longestPhrase : 1;
      for (let count = 2; count <= longest; count++) found.push(whole.get(words.slice(i, i + count).join(' ')));
      return found.filter((subject) => subject !== undefined);
    });
  };
  const han = (text: string): string[] => {
    const found: string[] = [];
    for (let i = 0; i < text.length; i++) {
      for (let length = longestHan; length > 0; length--) {
        const subject = whole.get(text.slice(i, i + length));
        if (subject === undefined || i + length > text.length) continue;
        found.push(subject);
        i += length - 1;
        break;
      }
    }
    return found;
  };
  return (text) => [...new Set([...latin(text), ...(text.match(/\p{Script=Han}+/gu) ?? []).flatMap(han)])];
}
