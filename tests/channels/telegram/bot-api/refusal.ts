/** How the server says no: its codes and, where it has them, its very words (tdlib/telegram-bot-api, May 2026). */

export interface RefusalParameters {
  readonly retry_after?: number;
  readonly migrate_to_chat_id?: number;
}

export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly code: number;
  readonly description: string;
  readonly parameters: RefusalParameters | undefined;

  constructor(code: number, description: string, parameters?: RefusalParameters) {
    super(`${code} ${description}`);
    this.code = code;
    this.description = description;
    this.parameters = parameters;
  }
}

/** Says 400, with the first letter made small as the server does, unless the words begin like a code. */
export function badRequest(words: string): Refusal {
  const isCode = /^.[A-Z_]/.test(words);
  return new Refusal(400, `Bad Request: ${isCode ? words : words.charAt(0).toLowerCase() + words.slice(1)}`);
}

export function tooMany(retryAfterS: number): Refusal {
  return new Refusal(429, `Too Many Requests: retry after ${retryAfterS}`, { retry_after: retryAfterS });
}

export const otherPoller =
  'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running';
export const webhookIsSet =
  "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first";
