/** Calls the Bot API and turns every failure into a value at once, because errors of the client carry the token. */
import { Api, GrammyError, HttpError } from 'grammy';
import type { ApiMethods, Opts } from 'grammy/types';
import type { Fault } from './fault.ts';

export type Method = keyof ApiMethods;
export type Result<M extends Method> = ReturnType<ApiMethods[M]>;
export type Answer<T> = { readonly ok: true; readonly result: T } | { readonly ok: false; readonly fault: Fault };

export interface CallLimits {
  readonly timeoutMs: number;
  /** Ends the call from outside, as at a stop. */
  readonly signal?: AbortSignal;
}

export interface BotApi {
  /** Never throws. */
  call<M extends Method>(method: M, payload: Opts<M>, limits: CallLimits): Promise<Answer<Result<M>>>;
}

type RawCall = (...args: readonly unknown[]) => Promise<unknown>;

/** Methods whose raw call takes the signal first. */
const withoutPayload: ReadonlySet<Method> = new Set<Method>(['getMe', 'getWebhookInfo']);

export function makeBotApi(server: { readonly token: string; readonly apiRoot: string }): BotApi {
  const api = new Api(server.token, { apiRoot: server.apiRoot.replace(/\/+$/, ''), timeoutSeconds: 120 });
  const raw = api.raw as unknown as Record<string, RawCall>;
  return {
    async call<M extends Method>(method: M, payload: Opts<M>, limits: CallLimits): Promise<Answer<Result<M>>> {
      const { signal, release } = ending(limits);
      try {
        const call = raw[method]!;
        const result = await (withoutPayload.has(method) ? call(signal) : call(payload, signal));
        return { ok: true, result: result as Result<M> };
      } catch (error) {
        return { ok: false, fault: limits.signal?.aborted ? { kind: 'stopped' } : faultOf(error, signal.aborted) };
      } finally {
        release();
      }
    },
  };
}

/**
 * Ends a call in time, or from outside. Made by hand: Node 20 collects a signal composed of others as garbage, its time limit
 * with it, and then a call is never ended.
 */
function ending({ timeoutMs, signal }: CallLimits): { readonly signal: AbortSignal; readonly release: () => void } {
  const controller = new AbortController();
  const end = (): void => controller.abort();
  const timer = setTimeout(end, timeoutMs);
  signal?.addEventListener('abort', end, { once: true });
  if (signal?.aborted) end();
  const release = (): void => {
    clearTimeout(timer);
    signal?.removeEventListener('abort', end);
  };
  return { signal: controller.signal, release };
}

function faultOf(error: unknown, timedOut: boolean): Fault {
  if (error instanceof GrammyError && typeof error.error_code === 'number') {
    const { retry_after, migrate_to_chat_id } = error.parameters;
    return {
      kind: 'answered',
      code: error.error_code,
      description: typeof error.description === 'string' ? error.description : '',
      retryAfterS: typeof retry_after === 'number' ? retry_after : null,
      movedTo: migrate_to_chat_id === undefined ? null : String(migrate_to_chat_id),
    };
  }
  if (timedOut) return { kind: 'lost', why: 'timeout' };
  const inner: unknown = error instanceof HttpError ? error.error : error;
  return neverWritten(inner) ? { kind: 'unreached', why: wordOf(inner) } : { kind: 'lost', why: wordOf(inner) };
}

/**
 * Whether the connection failed before a request could be written. Every address refusing gives an error without a reason
 * (an AggregateError of connects); a name that is not found and a certificate that is refused come before any request.
 */
function neverWritten(error: unknown): boolean {
  if (!(error instanceof Error) || (error as { type?: unknown }).type !== 'system') return false;
  const [, reason = 'unread'] = / reason: (.*)$/s.exec(error.message) ?? [];
  return (
    /^(connect |getaddrinfo |$)/.test(reason) ||
    reason.includes('before secure TLS connection was established') ||
    /^(CERT_|DEPTH_ZERO|ERR_TLS_|ERR_SSL_|SELF_SIGNED|UNABLE_TO_)/.test(codeOf(error))
  );
}

/** Only a code in capitals or the client's own short word: its sentences carry the address and with it the token. */
function wordOf(error: unknown): string {
  const code = codeOf(error);
  if (code !== '') return code;
  const type = (error as { type?: unknown } | null)?.type;
  return type === 'invalid-json' ? 'garbled' : 'broken';
}

function codeOf(error: unknown): string {
  const code = (error as { code?: unknown } | null)?.code;
  return typeof code === 'string' && /^[A-Z][A-Z0-9_]+$/.test(code) ? code : '';
}
