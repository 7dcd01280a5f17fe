/** The vocabulary of a flow file, as its YAML says it. What each word means is told in flows/how-to-read.md and in book.ts. */
import type { Json } from './flow.ts';

export type RawValues = { readonly [name: string]: Json };
/** Facts by name, among them values by name; or only those. */
export type RawWith = readonly (string | RawValues)[] | RawValues;

/** Of several each must hold. */
export type RawCondition = string | readonly string[];

export interface RawFlow {
  readonly flow: string;
  readonly about: string;
  readonly starts: string;
  readonly news?: string | undefined;
  readonly passing?: boolean | undefined;
  readonly aside?: boolean | undefined;
  readonly 'under-way'?: RawCondition | undefined;
  readonly 'no-way-back'?: RawCondition | undefined;
  /** Facts that go together, by one name. */
  readonly together?: { readonly [name: string]: readonly string[] } | undefined;
  /** Conditions by name. */
  readonly conditions?: { readonly [name: string]: RawCondition } | undefined;
  readonly takes?: readonly string[] | undefined;
  readonly listens?:
    | {
        readonly when?: RawCondition | undefined;
        readonly facts: { readonly [fact: string]: readonly string[] | null };
      }
    | undefined;
  readonly hears?: readonly RawLine[] | undefined;
  readonly wakes?: { readonly [timer: string]: readonly RawLine[] } | undefined;
  readonly places: { readonly [name: string]: RawPlace };
  readonly front?: RawFront | undefined;
}

export interface RawFront {
  readonly reads: string;
  readonly opens: string;
  readonly parts?: string | undefined;
  readonly 'hands-on'?: RawCondition | undefined;
  readonly notices?: readonly RawLine[] | undefined;
  readonly always: readonly RawLine[];
  readonly otherwise: readonly RawLine[];
  readonly sentences: {
    readonly 'stale-tap': string;
    readonly 'already-so': string;
    readonly 'nothing-before': string;
    readonly 'flow-changed': string;
    readonly 'one-at-a-time': string;
  };
}

export interface RawPlace {
  readonly asks?: string | undefined;
  readonly needs?: { readonly [fact: string]: string } | undefined;
  readonly do?: readonly RawLine[] | undefined;
  readonly repeats?: readonly RawLine[] | undefined;
  readonly choices?: readonly RawChoice[] | undefined;
  readonly hears?: readonly RawLine[] | undefined;
  readonly wakes?: { readonly [timer: string]: readonly RawLine[] } | undefined;
  readonly leads?: string | undefined;
  readonly slot?: string | undefined;
  readonly once?: boolean | undefined;
  readonly passing?: boolean | undefined;
}

/** A bare text is a sentence to say. */
export type RawLine = string | RawActions;

export interface RawActions {
  readonly when?: RawCondition | undefined;
  readonly set?: RawValues | undefined;
  readonly call?: string | undefined;
  readonly with?: RawWith | undefined;
  readonly keep?: string | undefined;
  readonly 'if-wrong'?: string | { readonly [code: string]: string } | undefined;
  readonly say?: string | readonly string[] | undefined;
  readonly show?: RawValues | undefined;
  readonly remember?: RawValues | undefined;
  readonly 'tell-shop'?: string | undefined;
  readonly withdraw?: string | readonly string[] | undefined;
  readonly wake?: { readonly name: string; readonly at: Json } | undefined;
  readonly later?:
    | {
        readonly name: string;
        readonly at: Json;
        readonly say: string | readonly string[];
        readonly slot?: string | undefined;
        readonly offers?: boolean | undefined;
      }
    | undefined;
  readonly do?: readonly RawLine[] | undefined;
  readonly go?: string | undefined;
}

export interface RawChoice {
  readonly id?: string | undefined;
  readonly label: string;
  readonly with?: RawValues | undefined;
  readonly when?: RawCondition | undefined;
  readonly each?: string | undefined;
  readonly gives?: RawValues | undefined;
  readonly unseen?: boolean | undefined;
  readonly set?: RawValues | undefined;
  readonly say?: string | readonly string[] | undefined;
  readonly remember?: RawValues | undefined;
  readonly 'tell-shop'?: string | undefined;
  readonly withdraw?: string | readonly string[] | undefined;
  readonly do?: readonly RawLine[] | undefined;
  readonly go?: string | undefined;
}
