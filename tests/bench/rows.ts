/** Every row of the measurement, in the order they are told. Each is loaded alone, so that a process holds only what it measures. */
import type { Row } from './figure.ts';

export const rows: { readonly [name: string]: () => Promise<Row> } = {
  dialogue: async () => (await import('./dialogue.ts')).dialogue,
  step: async () => (await import('./step.ts')).stepping,
  plan: async () => (await import('./plan.ts')).planning,
  reading: async () => (await import('./reading.ts')).reading,
  growth: async () => (await import('./growth.ts')).growth,
  page: async () => (await import('./page.ts')).page,
  lateness: async () => (await import('./lateness.ts')).lateness,
};
