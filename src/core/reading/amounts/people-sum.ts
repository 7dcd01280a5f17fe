/** How many people a run of them comes to: "me and two friends", 兩個人 我和我媽. Finds none in a text. */
import { before } from '../nearby.ts';

export type Sort = 'me' | 'one' | 'two' | 'many' | 'join';

export interface Link {
  readonly sort: Sort | 'number';
  readonly text: string;
  readonly value: number;
  readonly start: number;
  readonly end: number;
}

/** There must be enough for those who may come. */
export const seatsFor = (value: number): number => Math.ceil(value);

export function sumOf(plain: string, chain: readonly Link[]): number | null {
  const people = chain.filter((l) => l.sort !== 'join');
  if (
    /^(?:我)?一个人/.test(chain.map((l) => (l.sort === 'number' ? (l.value === 1 ? '一' : '几') : l.text)).join('')) &&
    people.length <= 3
  )
    return 1;
  const whole = countedThenNamed(chain);
  if (whole !== null) return whole;
  let sum = 0;
  let count: number | null = null;
  let said = 0;
  let numbered = false;
  let me = false;
  let kin = false;
  for (const [i, l] of people.entries()) {
    if (l.sort === 'number') count = l.value;
    else if (l.sort === 'me') {
      if (isPossessive(chain, l)) continue;
      me = true;
      said++;
    } else {
      // 一口 is a sip, "one more" a seat.
      if (count === 1 && /^(?:口|more)$/.test(l.text)) return null;
      // 同老婆兩個人: both counted already.
      if (count !== null && kin && isTotal(chain, l)) return count;
      const each = l.sort === 'two' ? 2 : 1;
      if (l.sort === 'many' && count === null) {
        // 我和同事四個人: all are counted at once.
        const [total, counted] = people.slice(i + 1);
        if (total?.sort === 'number' && counted && isTotal(chain, counted)) return total.value;
        // "friends" alone says no number, and then neither does the whole.
        if (i > 0 || people.length > 1) return null;
        continue;
      }
      sum += l.sort === 'two' ? each : (count ?? each);
      numbered ||= count !== null;
      kin ||= l.sort !== 'many' || /friend|朋友|同事|老友|同学|guest|客|colleague/.test(l.text);
      said++;
      count = null;
    }
  }
  const [first] = chain;
  const ahead = before(plain, first?.start ?? 0);
  const withMe =
    !me &&
    kin &&
    !notAlong.test(ahead) &&
    !/^(?:teacher|instructor|tutor|expert|老师|师傅)$/.test(people[0]?.text ?? '') &&
    (/\bwith $/.test(ahead) ||
      (bringsAlong.test(first?.sort === 'join' ? first.text : '') && chain[1]?.text !== 'the'));
  if (said === 0 || sum + (me ? 1 : 0) === 0 || (me && sum === 0)) return null;
  const isPair = people.some(({ sort, text }) => sort === 'two' && text.startsWith('两'));
  if (numbered || isPair || said >= 2 || withMe || (people.some((p) => p.sort === 'two') && /\bfor $/.test(ahead)))
    return sum + (me || withMe ? 1 : 0);
  return null;
}

/** "What is wrong with my dad", "swap with my friend": nobody comes along. */
const notAlong =
  /\b(?:wrong|matter|up|happened|happening|swap|swapped|swapping|switch|trade|places|seats|dates|days|lessons) (?:with )?$/;

/** "With the teacher" brings nobody along. */
const bringsAlong = /^(?:with|同|和|跟|与)$/;

/** 兩個人 我和我媽: how many, and then who they are. */
function countedThenNamed([number, many, me]: readonly Link[]): number | null {
  const isNamed = number?.sort === 'number' && /^(?:个人|人|位)$/.test(many?.text ?? '') && me?.sort === 'me';
  return isNamed ? number.value : null;
}

/** A number of people right after the people themselves, with nothing that joins. */
function isTotal(chain: readonly Link[], many: Link): boolean {
  const at = chain.indexOf(many);
  const told = chain[at - 2];
  return /^(?:个人|人|位)$/.test(many.text) && told !== undefined && told.sort !== 'join' && told.sort !== 'number';
}

/** 我太太 is "my wife"; 我同太太 is "I and my wife". */
function isPossessive(chain: readonly Link[], me: Link): boolean {
  const next = chain[chain.indexOf(me) + 1];
  return (
    me.text.startsWith('我') &&
    next !== undefined &&
    next.start === me.end &&
    (next.sort === 'one' || next.sort === 'two')
  );
}
