/** Texts nobody would write, and JSON in which something is wrong. */
import type { Json } from '../../src/core/units.ts';
import type { Dice } from './counts.ts';

/** Parted by dots. */
const bits = [
  'tieguanyin·110 ml·gaiwan·鐵觀音·蓋碗·绿茶·90 °C·194F·3 g·1/2·-5 ml·9e99 ml·0 ml·½ tsp·１２０ｍｌ·一百二十毫升',
  'forget me·back·start over·guide me·ready·questions·my data·lesson-12·talk to the shop·1·999·yes·no·why',
  '<b>·</script>·{ $x }·{·}·*·_·`·"·\'·\\·%s·%·&#0;·=cmd|1·;--·\0·\u0007·\r\n·\t·__proto__·constructor·null·NaN',
  '\u202E·\u200B·\u200D·\uFEFF·\uD800·\uDFFF·🍵·👩‍👩‍👧‍👦·e\u0301\u0323\u0324·𠮷·ﷺ·ß·İ',
  '((((((((((·..........·1111111111·aaaaaaaaaa·          ·, , , , ·10 10 10 10 ·ml ml ml ·%%%%%%·茶茶茶茶茶茶',
].flatMap((some) => some.split('·'));

/** Mostly short, sometimes as long as any channel lets through. */
export function strangeText({ below, pick }: Dice): string {
  const shape = below(10);
  if (shape === 0)
    return pick(bits)
      .repeat(1 + below(600))
      .slice(0, 5_000);
  if (shape === 1) return Array.from({ length: below(400) }, () => String.fromCodePoint(below(0x10ffff))).join('');
  const words = Array.from({ length: 1 + below(shape === 2 ? 400 : 8) }, () => pick(bits));
  return words.join(pick([' ', '', ', ', '\n'])).slice(0, 5_000);
}

/** One or two things about it are not as they were; it may be no JSON any more. */
export function spoiltJson(value: object, dice: Dice): string {
  const whole = JSON.parse(JSON.stringify(value)) as Json;
  const spoilt = JSON.stringify(spoil(dice.below(2) === 0 ? spoil(whole, dice) : whole, dice)) ?? 'null';
  const shape = dice.below(12);
  if (shape === 0) return spoilt.slice(0, dice.below(spoilt.length));
  if (shape === 1) return spoilt + dice.pick(bits);
  if (shape === 2) return '['.repeat(dice.below(20_000)) + spoilt;
  if (shape === 3) return spoilt.replace('{', '{"__proto__":{"kind":"text"},');
  return spoilt;
}

/** Another value in a random place. */
function spoil(value: Json, dice: Dice): Json {
  const { below, pick } = dice;
  const isLeaf = typeof value !== 'object' || value === null;
  if (isLeaf || below(6) === 0) return otherValue(dice);
  if (Array.isArray(value)) return value.map((one, i) => (i === below(value.length) ? spoil(one, dice) : one));
  const names = Object.keys(value);
  const name = pick(names);
  if (name === undefined) return otherValue(dice);
  const { [name]: chosen = null, ...rest } = value as Readonly<Record<string, Json>>;
  const shape = below(8);
  if (shape === 0) return rest;
  if (shape === 1) return { ...rest, [name]: chosen, [strangeText(dice).slice(0, 20)]: otherValue(dice) };
  return { ...rest, [name]: spoil(chosen, dice) };
}

function otherValue(dice: Dice): Json {
  const { below, pick } = dice;
  return pick<() => Json>([
    () => null,
    () => below(2) === 0,
    () => pick([0, -1, 1.5, 1e308, -1e308, 2 ** 53, 2 ** 63, 5e-324]),
    () => strangeText(dice),
    () => 'x'.repeat(below(100_000)),
    () => [],
    () => ({}),
    () => Array.from({ length: below(50) }, () => below(9)),
    () => ({ id: below(9), kind: 'text', text: strangeText(dice) }),
  ])();
}
