/** Whose name a shopkeeper says, among those on the lists: every one it fits as well as another, for nobody is guessed. */
import { plainText } from '../../teas/plain-text.ts';

export interface Named {
  readonly booking: string;
  readonly name: string;
}

/** Stand beside a name, and are none. */
const besides = new Set(
  'and a an the friend friends two three four five with plus mr mrs ms miss dr of for her his their my from to on off at in is'.split(
    ' ',
  ),
);
const hanBesides = /[和跟與与及、，,]|[一二兩两三四五六]?(?:位|個人|个人)|朋友|先生|小姐|太太|女士/gu;

/** Those whose names hold most of what is said of a name; none where nothing is. */
export function namedBy<Kind extends Named>(sentence: string, known: readonly Kind[]): readonly Kind[] {
  const { plain } = plainText(sentence);
  const said = new Set(latinIn(plain));
  const fits = known.map((one) => ({ one, weight: fit(plainText(one.name).plain, { plain, said }) }));
  const most = Math.max(0, ...fits.map(({ weight }) => weight));
  return most === 0 ? [] : fits.filter(({ weight }) => weight === most).map(({ one }) => one);
}

/** How many letters of the sentence are this name. */
function fit(name: string, { plain, said }: { readonly plain: string; readonly said: ReadonlySet<string> }): number {
  const latin = latinIn(name).filter((word) => said.has(word));
  const han = hanIn(name).filter((word) => plain.includes(word));
  return [...latin, ...han, ...surnameIn(name, plain)].reduce((sum, word) => sum + word.length, 0);
}

/** 林小姐, of 林曉: less than a name that is said in full. */
function surnameIn(name: string, plain: string): readonly string[] {
  const [, surname = ''] = /^(\p{Script=Han})\p{Script=Han}{1,2}$/u.exec(name) ?? [];
  const isAddress = new RegExp(`^.${address}$`, 'u').test(name);
  return surname !== '' && !isAddress && new RegExp(surname + address, 'u').test(plain) ? [surname] : [];
}
const address = '(?:先生|小姐|太太|女士|老師|老师|同學|同学|阿姨|姐|哥)';

/** "Rosa's" is Rosa. */
const latinIn = (plain: string): readonly string[] =>
  (plain.match(/[^\P{L}\p{Script=Han}](?:[^\P{L}\p{Script=Han}]|['’.-])*/gu) ?? [])
    .map((word) => word.replace(/'s$/u, '').replace(/[.'-]+$/u, ''))
    .filter((word) => word.length > 1 && !besides.has(word));

/** 陳大文 is called 大文 as well. */
function hanIn(name: string): readonly string[] {
  // 林先生: of a single sign the form of address is part of the name.
  const addressed = /^\p{Script=Han}(?:先生|小姐|太太|女士|老師|姐|哥)$/u.test(name) ? [name] : [];
  const words = [...addressed, ...(name.replace(hanBesides, ' ').match(/\p{Script=Han}{2,}/gu) ?? [])];
  return words.flatMap((word) => (word.length === 3 ? [word, word.slice(1)] : [word]));
}
