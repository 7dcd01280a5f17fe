/** Counts and measures, and the text in which they are given out: the Prometheus text format 0.0.4. Knows nothing of tea. */

export type Labels = { readonly [name: string]: string };

export interface Sample {
  readonly labels?: Labels;
  readonly value: number;
}

export interface Counter {
  add(labels?: Labels): void;
}

export interface Histogram {
  observe(value: number, labels?: Labels): void;
}

export interface Metrics {
  counter(name: string, help: string): Counter;
  /** `bounds` grow; a last one without end is added. */
  histogram(name: string, help: string, bounds: readonly number[]): Histogram;
  /** In the order in which they were made. */
  text(): string;
}

export function makeMetrics(): Metrics {
  const blocks: (() => string)[] = [];
  return {
    counter(name, help) {
      const counts = new Map<string, number>();
      blocks.push(() => block({ name, help, kind: 'counter' }, lines(name, counts)));
      return { add: (labels = {}) => raise(counts, written(labels), 1) };
    },
    histogram(name, help, bounds) {
      const filled = new Map<string, number>();
      const sums = new Map<string, number>();
      const counts = new Map<string, number>();
      const parts = () => [
        ...lines(`${name}_bucket`, filled),
        ...lines(`${name}_sum`, sums),
        ...lines(`${name}_count`, counts),
      ];
      blocks.push(() => block({ name, help, kind: 'histogram' }, parts()));
      return {
        observe(value, labels = {}) {
          for (const bound of [...bounds, Infinity]) {
            raise(filled, written({ ...labels, le: number(bound) }), value <= bound ? 1 : 0);
          }
          raise(sums, written(labels), value);
          raise(counts, written(labels), 1);
        },
      };
    },
    text: () => blocks.map((show) => show()).join(''),
  };
}

/** A measure read as it is asked for; no samples leave it out. */
export function gauge(name: string, help: string, samples: readonly Sample[]): string {
  return plain({ name, help, kind: 'gauge' }, samples);
}

/** A count that someone else keeps. */
export function total(name: string, help: string, value: number): string {
  return plain({ name, help, kind: 'counter' }, [{ value }]);
}

interface Head {
  readonly name: string;
  readonly help: string;
  readonly kind: 'counter' | 'gauge' | 'histogram';
}

function plain(head: Head, samples: readonly Sample[]): string {
  if (samples.length === 0) return '';
  const values = new Map(samples.map(({ labels = {}, value }) => [written(labels), value]));
  return block(head, lines(head.name, values));
}

const block = ({ name, help, kind }: Head, samples: readonly string[]): string =>
  [
    `# HELP ${name} ${help.replaceAll('\\', '\\\\').replaceAll('\n', '\\n')}`,
    `# TYPE ${name} ${kind}`,
    ...samples,
    '',
  ].join('\n');

const lines = (name: string, values: ReadonlyMap<string, number>): readonly string[] =>
  [...values].map(([labels, value]) => `${name}${labels} ${number(value)}`);

function written(labels: Labels): string {
  const pairs = Object.entries(labels).map(([name, value]) => `${name}="${escaped(value)}"`);
  return pairs.length === 0 ? '' : `{${pairs.join(',')}}`;
}

const escaped = (value: string): string =>
  value.replaceAll('\\', '\\\\').replaceAll('"', '\\"').replaceAll('\n', '\\n');

function number(value: number): string {
  if (value === Infinity) return '+Inf';
  return value === -Infinity ? '-Inf' : String(value);
}

function raise(counts: Map<string, number>, key: string, by: number): void {
  counts.set(key, (counts.get(key) ?? 0) + by);
}
