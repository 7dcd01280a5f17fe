/** Whether a message names what a plan is made of, or can only be of the brew at hand. */
import { after, before } from './nearby.ts';
import type { Observation } from './observation.ts';
import type { VesselMention } from './vessel.ts';

/** Neither a tea nor a vessel nor an amount: what is said can only be of the brew at hand. */
export function namesNothing(
  { teas, vessels, quantities }: Observation,
  passesOver: (vessel: VesselMention) => boolean = () => false,
  besides: keyof Observation['quantities'] | null = null,
): boolean {
  return (
    teas.length === 0 &&
    vessels.every(passesOver) &&
    Object.entries(quantities).every(([name, { value }]) => value === null || name === besides)
  );
}

/** "The water in the pot": the pot at hand, and no other. */
export const isFaint = ({ meaning }: VesselMention): boolean =>
  meaning.is === 'nothing' || (meaning.is === 'vessel' && meaning.faint);

/** "What if I forget it in the pot": asked of whichever pot the plan is for. */
export const isAtHand = ({ plain }: Observation, vessel: VesselMention): boolean =>
  isFaint(vessel) &&
  (vessel.meaning.is === 'nothing' ||
    theSame.test(before(plain, vessel.start)) ||
    /^子?[里内中]/.test(after(plain, vessel.end)));

/** "Only half the pot": of the pot at hand as well. */
export const isHalved =
  ({ plain }: Observation) =>
  (vessel: VesselMention): boolean =>
    isFaint(vessel) && (plain.charAt(vessel.start) === '半' || halfOf.test(before(plain, vessel.start)));

const halfOf = /\bhalf (?:of )?(?:an?|the|my|this|that) $|半$/;

const theSame = /\b(?:the|this|that)(?: same| whole)? $/;
