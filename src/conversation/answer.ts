/** From one event to one commit: asks the flow what happens and writes its effects as changes. Pure but for the step given. */
import type { Effect, Facts, FlowEvent, FlowState, Phrase } from '../core/flow/flow.ts';
import { languages, type Instant, type Language } from '../core/units.ts';
import type { Change, Commit, EventRef, Priority, Turn } from '../store/contract.ts';
import { languageOfDevice } from '../core/language-tag.ts';
import { houseFacts, type Means } from './house-facts.ts';
import { codeUse, farewell, forgetting, shopWork } from './shop-work.ts';

/** The flow engine with its book already in hand. */
export type Step = (
  state: FlowState | null,
  event: FlowEvent,
  around: {
    readonly nowMs: number;
    readonly language: string;
    readonly memory: Facts;
    readonly deliveryMs?: number;
    readonly house?: Facts;
  },
) => { readonly state: FlowState; readonly effects: readonly Effect[] };

/** What is said to be later than this is a reminder; sooner, it is a brew's timer and goes first. */
const reminderAfterMs = 60 * 60 * 1000;

export interface Moment {
  readonly now: Instant;
  /** How long a message takes to arrive where this person is. */
  readonly deliveryMs: number;
  readonly means: Means;
}

/** What a person did counts from when they did it, however late it is handled. */
export function answer(step: Step, turn: Turn, { now, deliveryMs, means }: Moment): Commit {
  const language = turn.language ?? languageOfDevice(turn.deviceLanguage);
  const event = flowEvent(turn, language);
  // A key that is unknown, forged or was shown to someone else changes nothing.
  if (!event) return plainCommit(turn, now, 'handled', 'house-unknown-tap');
  const nowMs = turn.receivedAt ?? now;
  const around = { nowMs, language, memory: turn.memory, deliveryMs, house: houseFacts(turn, means) };
  const { state, effects } = step(turn.state, event, around);
  const spoken = spokenFrom(effects) ?? language;
  const changes: readonly Change[] = isForgetting(effects)
    ? [{ do: 'forget', farewell: farewell(effects) }]
    : [...codeUse(turn), ...effects.flatMap((effect) => asChanges(effect, { event, now, turn, language: spoken }))];
  return commitOf(turn, now, { outcome: 'handled', state, language: spoken, changes });
}

/** The event is put aside as failed, so that the person can go on; they are told in one sentence. */
export function failure(turn: Turn, now: Instant): Commit {
  return plainCommit(turn, now, 'failed', 'house-stumbled');
}

export function eventRef({ event }: Turn): EventRef {
  return event.kind === 'wake' ? { kind: 'wake', name: event.name } : { kind: 'incoming', seq: event.seq };
}

function plainCommit(turn: Turn, now: Instant, outcome: Commit['outcome'], key: string): Commit {
  const phrase: Phrase = { key, values: {} };
  return commitOf(turn, now, {
    outcome,
    state: turn.state,
    language: turn.language ?? languageOfDevice(turn.deviceLanguage),
    changes: [{ do: 'say', saying: { phrases: [phrase], choices: [] }, due: now, priority: 'reply' }],
  });
}

function commitOf(
  turn: Turn,
  now: Instant,
  { outcome, state, language, changes }: Pick<Commit, 'outcome' | 'state' | 'language' | 'changes'>,
): Commit {
  const { person, version, address } = turn;
  return { person, version, event: eventRef(turn), address, now, outcome, state, language, changes };
}

function flowEvent({ event }: Turn, language: Language): FlowEvent | null {
  switch (event.kind) {
    case 'text':
      return { kind: 'text', text: event.text, language };
    case 'open':
      return { kind: 'opened', payload: event.payload };
    case 'wake':
      return { kind: 'timer', name: event.name, dueAtMs: event.at };
    case 'tap':
      return (
        event.chosen && { kind: 'chosen', choice: event.chosen.id, from: event.chosen.from, gives: event.chosen.gives }
      );
    default:
      return event satisfies never;
  }
}

const isForgetting = (effects: readonly Effect[]): boolean =>
  effects.some((effect) => effect.do === 'task' && effect.task === forgetting);

interface Around {
  readonly event: FlowEvent;
  readonly now: Instant;
  readonly turn: Turn;
  readonly language: Language;
}

function asChanges(effect: Effect, { event, now, turn, language }: Around): readonly Change[] {
  switch (effect.do) {
    case 'say': {
      const due = effect.saying.later?.atMs ?? now;
      return [{ do: 'say', saying: effect.saying, due, priority: priorityOf(due - now, event) }];
    }
    case 'wake':
      return [{ do: 'wake', name: effect.name, at: effect.atMs }];
    case 'withdraw':
    case 'remember':
      return [effect];
    case 'task':
      return shopWork(effect, turn, language);
    default:
      return effect satisfies never;
  }
}

function priorityOf(waitMs: number, event: FlowEvent): Priority {
  if (waitMs > reminderAfterMs) return 'reminder';
  return waitMs > 0 || event.kind === 'timer' ? 'timer' : 'reply';
}

/** The language the flow remembers of the person is the one they are answered in. */
export function spokenFrom(effects: readonly Effect[]): Language | undefined {
  const told = effects.findLast((effect) => effect.do === 'remember' && effect.name === 'language');
  return told?.do === 'remember' ? languages.find((language) => language === told.value) : undefined;
}
