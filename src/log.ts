/** One structured line an event, on stderr. It takes no message text, no address, no token: only names, counts and codes. */
import { pino } from 'pino';

export type LogLevel = 'silent' | 'error' | 'warn' | 'info' | 'debug';

/** What may be told of an event. Never what a person wrote, nor who or where they are. */
export interface LogFields {
  readonly [name: string]: string | number | boolean | null | undefined;
}

export interface Log {
  debug(event: string, fields?: LogFields): void;
  info(event: string, fields?: LogFields): void;
  warn(event: string, fields?: LogFields): void;
  error(event: string, fields?: LogFields): void;
}

export function makeLog(level: LogLevel): Log {
  // Synchronous, so that the last line before an exit is not lost.
  const sink = pino({ level, base: null }, pino.destination({ dest: 2, sync: true }));
  return {
    debug: (event, fields) => sink.debug(fields ?? {}, event),
    info: (event, fields) => sink.info(fields ?? {}, event),
    warn: (event, fields) => sink.warn(fields ?? {}, event),
    error: (event, fields) => sink.error(fields ?? {}, event),
  };
}

/**
 * What a log may know of an error: its kind, its code and where it was thrown. The message stays out,
 * because messages of foreign libraries carry addresses, tokens and what people wrote.
 */
export function errorFields(error: unknown): LogFields {
  if (!(error instanceof Error)) return { error: typeof error };
  const code = (error as { code?: unknown }).code;
  return {
    error: error.name,
    ...(typeof code === 'string' || typeof code === 'number' ? { code } : {}),
    at: framesOf(error).slice(0, 4).join(' < '),
  };
}

function framesOf(error: Error): readonly string[] {
  // The stack repeats the message first; frames alone start with "    at ".
  const lines = (error.stack ?? '').split('\n').filter((line) => /^ {4}at .*:\d+:\d+\)?$/.test(line));
  return lines.map((line) =>
    line
      .trim()
      .replace(/^at /, '')
      .replace(/\(?file:.*\/(src|dist)\//, '$1/')
      .replace(/\)$/, ''),
  );
}
