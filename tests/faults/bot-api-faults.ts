/** F8: every fault of the Bot API against one sending, and the copies that arrive. */
import { cases, runFaultCase } from '../channels/telegram/fault-table.ts';
import { sideBySide, Tally, type Fault } from './fault.ts';

export const botApiFaults: Fault = {
  id: 'F8',
  title: `${cases.length} faults of the Bot API`,
  unit: 'sendings',
  counts: { few: cases.length, usual: cases.length * 20, long: cases.length * 1_000 },
  seconds: 40,
  async run({ count }) {
    const tally = new Tally();
    const times = Math.ceil(count / cases.length);
    const rows = await sideBySide(cases.length, 8, (n) => runFaultCase(cases[n]!, times));
    for (const { name, times: tried, wrong, copies } of rows) {
      for (let i = 0; i < tried; i++) tally.add(i < wrong.length && `${name}: ${wrong[i]}`);
      tally.wrong(copies[1] > 2 && `${name}: ${copies[1]} copies`);
    }
    return tally.found({ 'most calls for one message': Math.max(...rows.map(({ mostCalls }) => mostCalls)) });
  },
};
