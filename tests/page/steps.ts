/** A customer's whole evening on the sheet as a table: what they do, and what then stands there. */
import type { Language } from './fake-house.ts';

/** What a person writes, in each language; what is tapped is counted instead. */
export type Line = Readonly<Record<Language, string>>;

export interface Step {
  readonly state: string;
  /** A line to write, the place of a choice among the newest, or nothing but to wait. */
  readonly does: Line | number | null;
  /** What must then be on the sheet, beside something new. */
  readonly shows?: string;
}

/** In these the whole page is looked over, in all others what is new on it. */
export const whole: ReadonlySet<string> = new Set([
  'greeting',
  'plan',
  'hold',
  'enrolled',
  'offline',
  'elsewhere',
  'forgotten',
  'not found',
]);

const line = (en: string, hant: string, hans: string): Line => ({ en, 'zh-Hant': hant, 'zh-Hans': hans });

export const steps: readonly Step[] = [
  { state: 'choices', does: line('Tieguanyin in my gaiwan', '蓋碗泡鐵觀音', '盖碗泡铁观音') },
  {
    state: 'plan',
    does: line('rou gui in a 110 ml gaiwan', '110毫升蓋碗泡肉桂', '110毫升盖碗泡肉桂'),
    shows: '.ladder',
  },
  { state: 'why', does: 1 },
  { state: 'plan again', does: 0 },
  { state: 'set out', does: 0 },
  { state: 'warm', does: 0 },
  { state: 'leaf', does: 0 },
  { state: 'rinse', does: 0 },
  { state: 'count', does: 0 },
  { state: 'poured', does: 0 },
  { state: 'poured again', does: 0 },
  { state: 'fill', does: 0 },
  { state: 'hold', does: 0, shows: '.digits' },
  { state: 'call', does: null, shows: '.digits.pour' },
  { state: 'next', does: 0 },
  { state: 'finish', does: line('finish', '收杯', '收杯') },
  { state: 'taste', does: line('it was too bitter', '太苦了', '太苦了') },
  { state: 'my tea', does: line('my tea', '我的茶', '我的茶') },
  { state: 'another device', does: line('open this on my tablet', '換到另一部手機', '换台电脑') },
  { state: 'lessons', does: line('which lessons are there?', '有哪些課？', '有哪些课？') },
  { state: 'lesson', does: 0 },
  { state: 'seats', does: 0 },
  { state: 'enrolled', does: 0, shows: '.file' },
  { state: 'named', does: line('Ann', '林小姐', '林小姐') },
];

/** One customer at a time, so that only one question waits for the shop. */
export const shopSteps: readonly Step[] = [
  { state: 'asking the shop', does: line('talk to the shop', '找店家', '找店家') },
  { state: 'asked', does: line('May I bring my parrot?', '可以帶鸚鵡進店裡嗎？', '可以带鹦鹉进店里吗？') },
];

export const lastSteps: readonly Step[] = [
  { state: 'forget me?', does: line('forget me', '忘記我', '忘记我') },
  { state: 'forgotten', does: 0 },
];
