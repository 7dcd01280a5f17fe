/** Teas that are like another: of its family, by the shape of the leaf and by how hot their water is. It knows nothing of what is in stock. */
import { usualHotC } from '../../brewing/leaf-profile.ts';
import type { Calls } from '../../flow/book.ts';
import type { Tea } from '../../teas/tea.ts';
import type { Celsius } from '../../units.ts';
import { leafFor } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { phrase } from '../values.ts';

export const similarCallNames = ['similarTeas'] as const;

/** More are no help to whoever must choose. Judgement. */
const mostTold = 3;
/** Judgement: fewer degrees make no other tea of it. */
const hardlyC: Celsius = 1.5;
/** Another shape of leaf counts as much as so many degrees. Judgement. */
const otherShapeC: Celsius = 5;

interface Likeness {
  readonly tea: Tea;
  readonly isSameShape: boolean;
  readonly warmerC: Celsius;
}

export const similarCalls = (
  content: CoreContent,
): { readonly [name in (typeof similarCallNames)[number]]: Calls[string] } => ({
  similarTeas: ({ tea: id = null, how = null }) => {
    const tea = content.teas.find((one) => one.id === id);
    if (!tea) return { gives: null };
    const all = nearest(content, tea);
    const roasted = all.filter(({ warmerC }) => how !== 'alike' && roastOf(tea, warmerC) === how);
    const alike = (roasted.length > 0 ? roasted : all).slice(0, mostTold);
    if (alike.length === 0) return { gives: null };
    return { gives: { told: alike.map(toldOf), isUnsure: how !== 'alike' && roasted.length === 0 } };
  },
});

/** Of oolong alone much hotter water tells the darker roast. Common practice, no source. */
const toldByRoast = 'oolong';
const muchC: Celsius = 5;

function nearest(content: CoreContent, tea: Tea): readonly Likeness[] {
  const waterOf = (one: Tea): Celsius => usualHotC(content.brewing, leafFor(content, { tea: one.id }));
  return content.teas
    .filter((one) => one.family === tea.family && one.id !== tea.id)
    .map((one) => ({ tea: one, isSameShape: one.form === tea.form, warmerC: waterOf(one) - waterOf(tea) }))
    .toSorted((a, b) => distance(a) - distance(b));
}

const roastOf = ({ family }: Tea, warmerC: Celsius): 'lighter' | 'darker' | null => {
  if (family !== toldByRoast || Math.abs(warmerC) < muchC) return null;
  return warmerC < 0 ? 'lighter' : 'darker';
};

const distance = ({ isSameShape, warmerC }: Likeness): Celsius => Math.abs(warmerC) + (isSameShape ? 0 : otherShapeC);

const toldOf = ({ tea, isSameShape, warmerC }: Likeness) =>
  phrase('brew-similar-one', {
    tea: tea.id,
    shape: isSameShape ? 'same' : 'other',
    roast: roastOf(tea, warmerC) !== null,
    water: Math.abs(warmerC) <= hardlyC ? 'same' : warmerC < 0 ? 'cooler' : 'hotter',
  });
