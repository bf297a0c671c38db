import { describe, expect, test } from 'vitest';
import { benchAtHand } from './book-at-hand.ts';

async function standing(row: string, texts: Readonly<Record<string, string>>): Promise<string | undefined> {
  const { bench } = await benchAtHand();
  for (const [line, text] of Object.entries(texts)) bench.acts.write([{ row: line, column: 'T03', text }]);
  bench.acts.choose({ row, column: 'T03' });
  return bench.panel.peek()?.standing.at(-1)?.words;
}

describe('the page calls lines by their labels', () => {
  test.each([
    ['moisture_start', { moisture_start: '' }, 'Needs a figure: moisture at start.'],
    ['wetting', { moisture_start: '' }, 'Waits on moisture at start. Needs a figure: moisture at start.'],
    ['leaves_cover', { leaf_sheet: '0 g/m2' }, 'Waits on leaf layers. The rule of leaf layers divides by zero.'],
  ])('the working panel tells of %s by labels', async (row, texts, sentence) => {
    expect(await standing(row, texts as Readonly<Record<string, string>>)).toBe(sentence);
  });

  test('what is written in a box is refused by labels', async () => {
    const { bench } = await benchAtHand();
    expect(
      bench.acts.write([{ row: 'litter', column: 'T03', text: 'layer_volume(floor_area, 40 L) / floor_area' }]),
    ).toBe('Litter depth, T03: Depth (depth of the layer) needs a length (mm, cm, in). You gave 40 L.');
    expect(bench.acts.write([{ row: 'drain_access', column: 'T03', text: 'blue' }])).toMatch(
      /^([A-Z][a-z ]+), T03: \1 takes .* or [a-z ]+\. You gave blue\./,
    );
  });
});
