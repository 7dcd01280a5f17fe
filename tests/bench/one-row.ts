/** A process that measures one row, and nothing else, for the one that started it. */
import { rows } from './rows.ts';

const [name = '', size] = process.argv.slice(2);
const row = await rows[name]?.();
if (!row) throw new Error(`no row is called "${name}"`);
const figures = await row.measure({ quick: size === 'quick' });
process.send?.({ name, about: row.about, figures }, () => process.exit(0));
