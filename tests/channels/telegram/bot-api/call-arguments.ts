/** The arguments of one call, whichever way they were sent: query, JSON, form or multipart. */
import type { IncomingMessage } from 'node:http';
import { badRequest, Refusal } from './refusal.ts';

export interface UploadedFile {
  readonly filename: string;
  readonly bytes: Buffer;
}

export class CallArguments {
  readonly values: ReadonlyMap<string, unknown>;
  readonly files: ReadonlyMap<string, UploadedFile>;

  constructor(values: ReadonlyMap<string, unknown>, files: ReadonlyMap<string, UploadedFile> = new Map()) {
    this.values = values;
    this.files = files;
  }

  has(name: string): boolean {
    return this.values.has(name);
  }

  /** '' when missing: the server takes every argument for a string. */
  text(name: string): string {
    const value = this.values.get(name);
    if (value === undefined) return '';
    if (typeof value === 'string') return value;
    return typeof value === 'number' || typeof value === 'boolean' ? String(value) : JSON.stringify(value);
  }

  /** Held within bounds, as the server does; the default when it is no number. */
  integer(name: string, otherwise: number, least = -(2 ** 53), most = 2 ** 53): number {
    const text = this.text(name);
    return /^-?\d+$/.test(text) ? Math.min(most, Math.max(least, Number(text))) : otherwise;
  }

  /** A value sent as JSON, inside JSON or as text; undefined when missing. */
  json(name: string, mistake: string): unknown {
    const value = this.values.get(name);
    if (typeof value !== 'string' || value === '') return value === '' ? undefined : value;
    try {
      return JSON.parse(value) as unknown;
    } catch {
      throw badRequest(mistake);
    }
  }
}

export async function readArguments(request: IncomingMessage, query: URLSearchParams): Promise<CallArguments> {
  const body = await bodyOf(request);
  const type = request.headers['content-type'] ?? '';
  const values = new Map<string, unknown>(query);
  if (body.length === 0) return new CallArguments(values);
  if (type.startsWith('application/json')) return new CallArguments(new Map([...values, ...jsonPairs(body)]));
  if (type.startsWith('application/x-www-form-urlencoded')) {
    return new CallArguments(new Map([...values, ...new URLSearchParams(body.toString('utf8'))]));
  }
  const boundary = /multipart\/form-data;.*boundary="?([^";]+)"?/.exec(type)?.[1];
  if (boundary === undefined) throw badRequest('Unsupported content type');
  return multipart(body, boundary, values);
}

function jsonPairs(body: Buffer): readonly (readonly [string, unknown])[] {
  try {
    const value: unknown = JSON.parse(body.toString('utf8'));
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return Object.entries(value);
  } catch {
    // Told below.
  }
  throw new Refusal(400, "Bad Request: can't parse JSON object");
}

function multipart(body: Buffer, boundary: string, query: ReadonlyMap<string, unknown>): CallArguments {
  const values = new Map(query);
  const files = new Map<string, UploadedFile>();
  const mark = Buffer.from(`--${boundary}`);
  for (let at = body.indexOf(mark); at >= 0;) {
    const next = body.indexOf(mark, at + mark.length);
    if (next < 0) break;
    const part = body.subarray(at + mark.length + 2, next - 2);
    at = next;
    const split = part.indexOf('\r\n\r\n');
    const head = part.subarray(0, split).toString('utf8');
    const bytes = part.subarray(split + 4);
    const name = /name="?([^";\r\n]+)"?/i.exec(head.replace(/filename\*?="?[^";\r\n]*"?/gi, ''))?.[1];
    const filename = /filename="?([^";\r\n]*)"?/i.exec(head)?.[1];
    if (name === undefined) continue;
    if (filename === undefined) values.set(name, bytes.toString('utf8'));
    else files.set(name, { filename, bytes: Buffer.from(bytes) });
  }
  return new CallArguments(values, files);
}

async function bodyOf(request: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of request as AsyncIterable<Buffer>) parts.push(part);
  return Buffer.concat(parts);
}
