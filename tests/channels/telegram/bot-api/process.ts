/** A stand-in that is worked through its control, for a process of its own. */
import { controlled } from './control.ts';
import { publishedLimits } from './flood-limiter.ts';
import { startStandIn, type StandIn } from './server.ts';

export async function startControlled(options: { readonly port: number; readonly flood: boolean }): Promise<StandIn> {
  let standIn: StandIn | null = null;
  standIn = await startStandIn({
    port: options.port,
    ...(options.flood ? { flood: publishedLimits } : {}),
    beside: (request, response) => standIn !== null && controlled(standIn, request, response),
  });
  return standIn;
}
