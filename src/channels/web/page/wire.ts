/** What the page and its server say to each other; both sides import these shapes and nothing else of each other. */
import type { Outgoing } from '../../../messages.ts';

export type PageLanguage = Outgoing['language'];

/** In the order they are offered, each named in itself. */
export const pageLanguages = { en: 'English', 'zh-Hant': '繁體中文', 'zh-Hans': '简体中文' } as const satisfies Record<
  PageLanguage,
  string
>;

export function isPageLanguage(tag: unknown): tag is PageLanguage {
  return typeof tag === 'string' && Object.hasOwn(pageLanguages, tag);
}

/** A message as the event stream carries it. */
export type Said = Omit<Outgoing, 'channel' | 'chat' | 'subject' | 'file'> & {
  /** What a file that goes with it is; it is fetched by the message's id (`/file/…`). */
  readonly file?: string;
};

/** Something a person wrote, chose or opened on any of their devices, as the event stream carries it. */
export interface Wrote {
  readonly line: string;
  readonly what: PostedWhat;
  /** As the page that posted it named it; left out when the past is told. */
  readonly updateId?: string;
}

export type Told = { readonly said: Said } | { readonly wrote: Wrote };

/** What a person did, as the page posts it; the id is made by the page, so that a repeat changes nothing. */
export interface Posted {
  readonly updateId: string;
  readonly language: PageLanguage;
  readonly what: PostedWhat;
}

export type PostedWhat =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'tap'; readonly key: string }
  | { readonly kind: 'open'; readonly payload: string };

/** UTF-16 code units of one text; five thousand characters outside the basic plane still fit. */
export const longestText = 10_000;

/** What the server leaves in the page for the scripts. */
export interface Boot {
  readonly language: PageLanguage;
  readonly words: PageWords;
  /** Names this person's sheet on this device, so that what is kept here never shows on another's. */
  readonly sheet: string;
  /** What was opened: "tea-tieguanyin", "lesson-12", or "" for the bare sheet. */
  readonly payload: string;
  /** The plan of the label, shown until the conversation answers. */
  readonly label: Said | null;
  /** Where the same conversation can be had on a telephone; null when nowhere else. */
  readonly telegram: string | null;
}

export const pageWordKeys = [
  'page-title',
  'page-sheet',
  'page-language',
  'page-you-wrote',
  'page-write-label',
  'page-write-hint',
  'page-write-on',
  'page-write',
  'page-write-full',
  'page-choices',
  'page-opening',
  'page-lost',
  'page-waiting',
  'page-refused',
  'page-left',
  'page-pour-now',
  'page-ready-at',
  'page-since',
  'page-sound',
  'page-sound-wake',
  'page-print',
  'page-fresh',
  'page-fresh-confirm',
  'page-my-data',
  'page-elsewhere',
  'page-elsewhere-show',
  'page-elsewhere-how',
  'page-elsewhere-type',
  'page-elsewhere-join',
  'page-elsewhere-wrong',
  'page-elsewhere-slow',
  'page-telegram',
  'page-from-label',
  'page-no-script',
  'page-no-cookie',
  'page-not-found',
  'page-failed',
  'page-too-fast',
  'page-back',
  'page-earlier',
  'page-file-gone',
] as const;
export type PageWordKey = (typeof pageWordKeys)[number];
export type PageWords = Readonly<Record<PageWordKey, string>>;
