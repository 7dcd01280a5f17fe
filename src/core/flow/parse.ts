/** Turns what a flow file says into a Flow, with every expression read. Tells each mistake by its path; reads no file. */
import type { CallLine, ChoiceLine, Flow, FrontRules, Line, Place, SayPart, Target, Value, Values } from './book.ts';
import { moves, type Move } from './book.ts';
import { Conditions } from './conditions.ts';
import type { Expression } from './expression.ts';
import type { Json } from './flow.ts';
import { factsOfFlow } from './outline.ts';
import type { RawChoice, RawCondition, RawFlow, RawFront, RawLine, RawPlace } from './raw.ts';
import { Together } from './together.ts';

export type Path = readonly (string | number)[];

export interface FlowProblem {
  readonly path: Path;
  readonly expected: string;
}

export interface ParsedFlow {
  readonly flow: Flow;
  readonly problems: readonly FlowProblem[];
}

/** `hash` names this content; a running conversation is pinned to it. */
export function parseFlow(raw: RawFlow, hash: string): ParsedFlow {
  const problems: FlowProblem[] = [];
  const together = new Together(raw.together, problems);
  const conditions = new Conditions(raw.conditions, problems);
  const flow = new Parser(together, conditions).flow(raw, hash);
  const facts = factsOfFlow(flow);
  together.noteWrong(facts);
  conditions.noteWrong(facts);
  return { flow, problems };
}

class Parser {
  readonly #together: Together;
  readonly #conditions: Conditions;

  constructor(together: Together, conditions: Conditions) {
    this.#together = together;
    this.#conditions = conditions;
  }

  flow(raw: RawFlow, hash: string): Flow {
    const places = Object.entries(raw.places);
    return {
      name: raw.flow,
      about: raw.about,
      hash,
      starts: raw.starts,
      news: raw.news ?? raw.starts,
      passing: (raw.passing ?? false) || (raw.aside ?? false),
      aside: raw.aside ?? false,
      underWay: this.#condition(raw['under-way'], ['under-way']),
      noWayBack: this.#condition(raw['no-way-back'], ['no-way-back']),
      takes: this.#together.facts(raw.takes ?? []),
      listens: {
        when: this.#condition(raw.listens?.when, ['listens', 'when']),
        facts: Object.fromEntries(
          Object.entries(raw.listens?.facts ?? {}).map(([name, clears]) => [
            name,
            { clears: this.#together.facts(clears ?? []) },
          ]),
        ),
      },
      hears: this.#lines(raw.hears, ['hears']),
      wakes: this.#wakes(raw.wakes, ['wakes']),
      places: Object.fromEntries(places.map(([name, place]) => [name, this.#place(name, place, ['places', name])])),
      front: raw.front ? this.#front(raw.front, ['front']) : null,
    };
  }

  #front(raw: RawFront, path: Path): FrontRules {
    return {
      reads: raw.reads,
      opens: raw.opens,
      parts: raw.parts ?? null,
      handsOn: this.#condition(raw['hands-on'], [...path, 'hands-on']),
      notices: this.#lines(raw.notices, [...path, 'notices']),
      always: this.#lines(raw.always, [...path, 'always']),
      otherwise: this.#lines(raw.otherwise, [...path, 'otherwise']),
      sentences: {
        staleTap: raw.sentences['stale-tap'],
        alreadySo: raw.sentences['already-so'],
        nothingBefore: raw.sentences['nothing-before'],
        flowChanged: raw.sentences['flow-changed'],
        oneAtATime: raw.sentences['one-at-a-time'],
      },
    };
  }

  #place(name: string, raw: RawPlace, path: Path): Place {
    return {
      name,
      asks: raw.asks ?? null,
      needs: Object.entries(raw.needs ?? {}).map(([fact, place]) => ({ fact, place })),
      lines: this.#lines(raw.do, [...path, 'do']),
      repeats: raw.repeats ? this.#lines(raw.repeats, [...path, 'repeats']) : null,
      choices: (raw.choices ?? []).map((choice, i) => this.#choice(choice, [...path, 'choices', i])),
      hears: this.#lines(raw.hears, [...path, 'hears']),
      wakes: this.#wakes(raw.wakes, [...path, 'wakes']),
      leads: raw.leads === undefined ? null : this.#target(raw.leads),
      slot: this.#slot(raw.slot, [...path, 'slot']),
      once: raw.once ?? false,
      passing: raw.passing ?? false,
    };
  }

  #choice(raw: RawChoice, path: Path): ChoiceLine {
    const { label, id, with: values, when, each, gives, unseen, ...line } = raw;
    return {
      id: id ?? label,
      label,
      with: this.#values(values, [...path, 'with']),
      when: this.#condition(when, [...path, 'when']),
      each: each === undefined ? null : this.#computed(each, [...path, 'each']),
      gives: this.#values(gives, [...path, 'gives']),
      isUnseen: unseen ?? false,
      line: this.#line(line, path),
    };
  }

  #wakes(raw: RawPlace['wakes'], path: Path): { readonly [timer: string]: readonly Line[] } {
    return Object.fromEntries(
      Object.entries(raw ?? {}).map(([timer, lines]) => [timer, this.#lines(lines, [...path, timer])]),
    );
  }

  #lines(raw: readonly RawLine[] | undefined, path: Path): readonly Line[] {
    return (raw ?? []).map((line, i) => this.#line(line, [...path, i]));
  }

  #line(raw: RawLine, path: Path): Line {
    if (typeof raw === 'string') return this.#line({ say: raw }, path);
    const values = this.#values(this.#together.given(raw.with ?? {}, [...path, 'with']), [...path, 'with']);
    return {
      when: this.#condition(raw.when, [...path, 'when']),
      set: raw.set ? this.#values(this.#together.values(raw.set, [...path, 'set']), [...path, 'set']) : null,
      call: this.#call(raw, values),
      say: this.#say(raw.say, [...path, 'say']),
      with: values,
      show: raw.show ? this.#values(raw.show, [...path, 'show']) : null,
      remember: raw.remember ? this.#values(raw.remember, [...path, 'remember']) : null,
      tellShop: raw['tell-shop'] === undefined ? null : { task: raw['tell-shop'], values },
      withdraw: raw.withdraw === undefined ? [] : [raw.withdraw].flat(),
      wake: raw.wake ? { name: raw.wake.name, at: this.#value(raw.wake.at, [...path, 'wake', 'at']) } : null,
      later: raw.later
        ? {
            name: raw.later.name,
            at: this.#value(raw.later.at, [...path, 'later', 'at']),
            say: this.#say(raw.later.say, [...path, 'later', 'say']),
            slot: this.#slot(raw.later.slot, [...path, 'later', 'slot']),
            offers: raw.later.offers ?? false,
          }
        : null,
      lines: this.#lines(raw.do, [...path, 'do']),
      go: raw.go === undefined ? null : this.#target(raw.go),
    };
  }

  #call(raw: Exclude<RawLine, string>, values: Values): CallLine | null {
    if (raw.call === undefined) return null;
    const wrong = raw['if-wrong'] ?? {};
    const targets = typeof wrong === 'string' ? { any: wrong } : wrong;
    return {
      name: raw.call,
      with: values,
      keep: raw.keep ?? null,
      wrong: Object.fromEntries(Object.entries(targets).map(([code, to]) => [code, this.#target(to)])),
    };
  }

  #say(raw: string | readonly string[] | undefined, path: Path): readonly SayPart[] {
    const parts = raw === undefined ? [] : [raw].flat();
    return parts.map((part) => (part.startsWith('=') ? { computed: this.#computed(part, path) } : { key: part }));
  }

  /** "back", "place", "flow/", "flow/place". */
  #target(raw: string): Target {
    if (moves.includes(raw as Move)) return { move: raw as Move };
    const [first = '', second] = raw.split('/');
    return second === undefined ? { flow: null, place: first } : { flow: first, place: second === '' ? null : second };
  }

  #slot(raw: string | undefined, path: Path): Value | null {
    return raw === undefined ? null : this.#value(raw, path);
  }

  #values(raw: { readonly [name: string]: Json } | undefined, path: Path): Values {
    return Object.fromEntries(
      Object.entries(raw ?? {}).map(([name, value]) => [name, this.#value(value, [...path, name])]),
    );
  }

  /** A text that starts with "=" is computed; everything else stands for itself. */
  #value(raw: Json, path: Path): Value {
    if (typeof raw === 'string' && raw.startsWith('=')) return { computed: this.#computed(raw, path) };
    if (Array.isArray(raw)) return { list: raw.map((item: Json, i) => this.#value(item, [...path, i])) };
    if (typeof raw === 'object' && raw !== null) {
      return { map: this.#values(raw as { readonly [name: string]: Json }, path) };
    }
    return { is: raw };
  }

  #condition(raw: RawCondition | undefined, path: Path): Expression | null {
    return raw === undefined ? null : this.#conditions.condition(raw, path);
  }

  #computed(raw: string, path: Path): Expression {
    return this.#conditions.expression(raw.replace(/^=/, ''), path);
  }
}
