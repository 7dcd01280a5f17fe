/** Every call as it came and what became of it, with times: what tests look at. */

export interface RecordedCall {
  readonly method: string;
  readonly chat: string;
  readonly at: number;
  readonly values: Readonly<Record<string, unknown>>;
  /** The server did what was asked, whatever the caller learnt of it. */
  processed: boolean;
  /** The code answered; 200 for a result; null while none, or never one. */
  code: number | null;
  endedAt: number | null;
}

export class CallRecord {
  readonly calls: RecordedCall[] = [];

  begin(call: Pick<RecordedCall, 'method' | 'chat' | 'at' | 'values'>): RecordedCall {
    const recorded = { ...call, processed: false, code: null, endedAt: null };
    this.calls.push(recorded);
    return recorded;
  }

  of(method: string): readonly RecordedCall[] {
    return this.calls.filter((call) => call.method === method.toLowerCase());
  }

  codes(): Readonly<Record<number, number>> {
    const counts: Record<number, number> = {};
    for (const { code } of this.calls) if (code !== null) counts[code] = (counts[code] ?? 0) + 1;
    return counts;
  }
}
