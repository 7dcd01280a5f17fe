/** The brew a person keeps as their usual for a tea: kept, found again, shown and let go of. Keeps no state. */
import type { Calls } from '../flow/book.ts';
import type { Facts } from '../flow/flow.ts';
import { listOf, phrase } from './values.ts';

export const ownUsualCallNames = ['keepUsual', 'usualFor', 'lastUsual', 'dropUsual', 'ownUsuals'] as const;

/** More teas than anyone has open at a time. */
const mostUsuals = 30;

const isOf =
  ({ tea = null, family = null }: Facts) =>
  (one: Facts): boolean =>
    tea === null ? one['tea'] === null && one['family'] === family : one['tea'] === tea;

export const ownUsualCalls: { readonly [name in (typeof ownUsualCallNames)[number]]: Calls[string] } = {
  /** As it is planned; what is put in and how hot is kept, and the times follow again. */
  keepUsual: ({ tea = null, family = null, volumeMl = null, strength = null, plan }, { memory }) => {
    const { vessel = null, leafG = null, waterC = null, style = null, bags = null } = plan as Facts;
    const kept = { tea, family, vessel, volumeMl, leafG, tempC: waterC, style, strength, bags };
    const others = listOf(memory['usuals']).filter((one) => !isOf(kept)(one));
    return { gives: [kept, ...others].slice(0, mostUsuals) };
  },
  usualFor: (given, { memory }) => ({ gives: listOf(memory['usuals']).find(isOf(given)) ?? null }),
  /** The one that was kept last. */
  lastUsual: (_, { memory }) => ({ gives: listOf(memory['usuals'])[0] ?? null }),
  dropUsual: (given, { memory }) => ({ gives: listOf(memory['usuals']).filter((one) => !isOf(given)(one)) }),
  ownUsuals: (_, { memory }) => ({
    gives: {
      items: listOf(memory['usuals']),
      told: listOf(memory['usuals']).map((one) =>
        phrase('my-told-keeps', {
          name: phrase(one['tea'] ? 'my-told-tea' : 'my-told-family', {
            tea: one['tea'] ?? null,
            family: one['family'] ?? null,
          }),
          vessel: one['vessel'] ?? null,
          volumeMl: one['volumeMl'] ?? null,
          leafG: one['leafG'] ?? null,
          waterC: one['tempC'] ?? null,
          unit: memory['unit'] ?? null,
        }),
      ),
    },
  }),
};
