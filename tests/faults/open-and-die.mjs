// Opens a database as the program does, and dies before the n-th statement of it: node --import watch.mjs open-and-die.mjs FILE [N]
import { openDatabase } from '../../dist/store/sqlite/database.js';

const [, , file, nth] = process.argv;
if (nth !== undefined) globalThis.dieAt = { nth: Number(nth) };
try {
  openDatabase(file).close();
} catch (error) {
  process.stderr.write(error.message);
  process.exit(1);
}
