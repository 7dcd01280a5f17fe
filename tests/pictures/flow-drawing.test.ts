import { describe, expect, it } from 'vitest';
import { drawFlow, type FlowSketch } from '../../src/pictures/flow-drawing.ts';

const sketch: FlowSketch = {
  name: 'picnic',
  about: 'What to <bring>',
  starts: 'basket',
  places: [
    { name: 'where', asks: 'spot', says: [], exits: [{ by: 'when answered', to: 'basket' }] },
    {
      name: 'basket',
      asks: null,
      says: ['Here & now', 'x'.repeat(200)],
      exits: [
        { by: 'needs spot', to: 'where' },
        { by: 'then', to: '(weather)' },
      ],
    },
    { name: 'attic', asks: null, says: [], exits: [] },
  ],
};
const svg = drawFlow(sketch);
const texts = [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text);

describe('the picture of a flow', () => {
  it('shows every place from the start on, and what nothing leads to last', () => {
    const titles = [...svg.matchAll(/font-weight="bold">([^<]*)</g)].map(([, title]) => title);
    expect(titles).toEqual(['basket', 'where – asks for spot', 'attic']);
  });

  it('sets places in by their distance from the start', () => {
    const [basket, where] = [...svg.matchAll(/<text x="(\d+)"[^>]*font-weight="bold"/g)].map(([, x]) => Number(x));
    expect(where).toBeGreaterThan(basket!);
  });

  it('ties one knot for each line that leads within the flow, and names where others lead', () => {
    expect(svg.match(/<circle/g)).toHaveLength(2);
    expect(texts).toContain('then  (weather)');
  });

  it('keeps long sentences short and markup harmless', () => {
    expect(Math.max(...texts.map((text) => text!.length))).toBeLessThan(90);
    expect(texts).toContain('What to &lt;bring&gt;');
    expect(texts).toContain('“Here &amp; now”');
  });

  it('has no number that is none', () => {
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });
});
