/** What the reader finds in a message, as flows are told it. Knows nothing of the talk it stands in. */
import type { Facts, Json } from '../flow/flow.ts';
import type { Hint } from '../reading/reading.ts';
import type { Mistake } from '../units.ts';
import type { CoreContent } from './core-content.ts';
import { asFacts, phrase } from './values.ts';

/** A message of any length is read by its beginning. */
const longestText = 5000;

export function heardMessage({ read }: Pick<CoreContent, 'read'>, text: string, hint: Hint): Facts {
  const heard = read(text.slice(0, longestText), hint);
  return {
    ...asFacts(heard),
    teas: heard.teas.length > 1 ? heard.teas : null,
    vessels: heard.vessels.length > 1 ? heard.vessels : null,
    noThermometer: heard.noThermometer || (heard.hasThermometer ? false : null),
    noScale: heard.noScale || (heard.hasScale ? false : null),
    unsure: heard.unsure || null,
    mistakes: heard.mistakes.map(mistakePhrase),
    blank: !/[\p{L}\p{N}]/u.test(text),
  };
}

const mistakePhrase = ({ code, values }: Mistake): Json =>
  code === 'number-expected' ? phrase('mistake-number-in-words') : phrase(`mistake-${code}`, values);
