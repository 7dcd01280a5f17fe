/** The shopkeeper's day with lessons, on a phone: planned, booked, moved, written about and cancelled, and each student told. */
import { afterEach, expect, it } from 'vitest';
import { customer, labels, pickUp, type Phone, type Seen } from './phone.ts';

const shopkeeper = 99;
const keepers = [{ channel: 'telegram', from: String(shopkeeper) }] as const;
let phone: Phone;
afterEach(() => phone.close());

const told = ({ fresh }: Seen): string => fresh.map(({ text }) => text).join('\n');
/** What the customer has been told since there were so many messages. */
const toldSince = (count: number): string =>
  phone
    .messages()
    .slice(count)
    .map(({ text }) => text)
    .join('\n');

it('leads from a sentence to a list at the door, and back to nothing', { timeout: 60_000 }, async () => {
  phone = await pickUp({ language: 'en', keepers });
  const desk = async (text: string): Promise<string> => told(await phone.say(text, shopkeeper));
  await desk('lessons, behind the counter');
  expect(await desk('Saturday 7 pm, white tea, 2 seats')).toContain('“white tea”, Saturday, January 17, 7:00 pm');
  expect(await desk('put it on the list')).toContain('It is on the list.');

  expect(told(await phone.say('lessons'))).toContain('2 seats free');
  await phone.say('1');
  await phone.say('book seats');
  expect(told(await phone.say('1'))).toContain('You have a seat: “white tea”, Saturday, January 17, 7:00 pm');
  await phone.say('Mei');

  expect(await desk('to the lessons')).toContain('1 of 2 seats taken');
  const { fresh } = await phone.say('1', shopkeeper);
  const buttons = fresh.flatMap(labels);
  expect(buttons).toEqual(expect.arrayContaining(['Who is coming', 'Move it', 'Cancel it']));
  expect(told(await phone.tap('Who is coming', shopkeeper))).toContain('1. Mei, one seat');

  let before = phone.messages().length;
  await phone.tap('To this lesson', shopkeeper);
  await phone.tap('Move it', shopkeeper);
  await desk('Sunday');
  await desk('yes');
  await phone.pass(5);
  expect(toldSince(before)).toContain('Sunday, January 18, 7:00 pm');

  before = phone.messages().length;
  await phone.tap('To this lesson', shopkeeper);
  await phone.tap('Write to all who are coming', shopkeeper);
  await desk('Please wear nothing that smells of perfume.');
  await desk('yes');
  await phone.pass(5);
  expect(toldSince(before)).toContain('Please wear nothing that smells of perfume.');

  before = phone.messages().length;
  await phone.tap('To this lesson', shopkeeper);
  await phone.tap('Cancel it', shopkeeper);
  await desk('The stove is broken.');
  await desk('yes');
  await phone.pass(5);
  expect(toldSince(before)).toContain('The stove is broken.');
  expect(told(await phone.say('lessons', customer))).not.toContain('seats free');
  expect(phone.log.lines.filter((line) => !line.startsWith('info'))).toEqual([]);
});
