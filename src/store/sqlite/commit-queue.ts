/** What waits to be written: in the order it came, and after that what is to see the rest. */
import type { Job } from './commit-group.ts';

export interface Queue {
  put(job: Job): void;
  /** So many of those that wait, and those that come last, once all that waited before them is taken. */
  take(most: number): readonly Job[];
  isEmpty(): boolean;
}

export function makeQueue(): Queue {
  const waiting: Job[] = [];
  const last: { readonly job: Job; readonly after: number }[] = [];
  let taken = 0;
  return {
    put(job) {
      if (job.last) last.push({ job, after: taken + waiting.length });
      else waiting.push(job);
    },
    take(most) {
      const jobs = waiting.splice(0, most);
      taken += jobs.length;
      const later = last.findIndex(({ after }) => after > taken);
      return [...jobs, ...last.splice(0, later === -1 ? last.length : later).map(({ job }) => job)];
    },
    isEmpty: () => waiting.length + last.length === 0,
  };
}
