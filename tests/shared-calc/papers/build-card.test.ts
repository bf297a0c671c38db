import { unasked } from '#shared-calc/fields/survey.ts';
import { describe, expect, test } from 'vitest';
import { buildCards, type BuildCard } from '#shared-calc/papers/build-card.ts';
import { pickLists } from '#shared-calc/papers/pick-list.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { demoBench, demoPrices, demoRecipes } from '#tests/demo-bench.ts';
import { cardBench, records, workMinutes } from './all-cards.ts';

const terms = { records, prices: demoPrices(records), display: plainDisplay, survey: unasked };

function cardOf(job: Readonly<Record<string, string>>, recipe = 'H1'): BuildCard {
  const bench = cardBench(job, recipe);
  const [card] = buildCards(bench, terms);
  if (!card) throw new Error('no card');
  return card;
}

describe('buildCards', () => {
  // Scenario 1: T07 with H1, no slope. 36.045 L less 0.538 of bead and 1.802 buried is 33.705, or 33.70 at two decimals.
  const flat = cardOf({ soil_rise: '0 mm' });
  const step = (title: string) => flat.steps.find((each) => each.title === title);

  test('a tank is built from the glass up, then closed, lit, misted and carried', () => {
    expect(flat.steps.map(({ title }) => title)).toEqual([
      'Tank',
      'Background',
      'Drainage',
      'Mesh',
      'Capping',
      'Blend the mix',
      'Place the mix',
      'Inoculate and mist',
      'Hardscape',
      'Plants',
      'Microfauna',
      'Leaves',
      'Cover glass',
      'Lamps and timer',
      'Misting',
      'Clean and look over',
      'Load, drive, carry',
      'Hand over',
    ]);
  });

  test('each step has what goes in, as it stands on the bag, and to what depth', () => {
    expect([step('Drainage')?.goods[0], step('Drainage')?.says[0]]).toEqual([
      {
        line: 'drainage_need',
        label: 'Expanded clay, loose',
        material: 'Expanded clay 8-16 mm',
        amount: '16.84\u00a0L',
      },
      'Rinse it and lay it 40\u00a0mm deep, level.',
    ]);
    expect(step('Place the mix')?.says[1]).toBe(
      'Lay it 90\u00a0mm deep at the front, rising 0\u00a0mm to the back: 33.70\u00a0L as placed.',
    );
    expect(step('Mesh')?.says).toEqual(['Cut 960\u00a0mm × 505\u00a0mm, turned up 30\u00a0mm all round.']);
    expect(step('Misting')?.says[0]).toBe('Nozzles: 2, at the walls and not at the animals; 15\u00a0s, 3 a day.');
  });

  test('83 kg filled are not lifted; empty two people carry it', () => {
    const lifting = cardOf({ soil_rise: '0 mm', screen_under_lamps: 'yes' }).lifting;
    expect(lifting).toEqual(['Empty: 2 people lift it.', 'Filled: do not lift, build in place.']);
  });

  test('plants stand by name, those that a small child should not chew left out where children are', () => {
    const bench = cardBench({});
    const namesFor = (underFives: 'yes' | 'no') =>
      buildCards(bench, { ...terms, survey: { ...unasked, underFives, publicRoom: 'no' } })[0]
        ?.steps.find(({ title }) => title === 'Plants')
        ?.says.join(' ') ?? '';
    const [anywhere, nursery] = [namesFor('no'), namesFor('yes')];
    expect([anywhere.includes('Ficus pumila'), nursery.includes('Ficus pumila')]).toEqual([true, false]);
  });

  test('its minutes are those of all work, but for the survey and the quoting', () => {
    const bench = cardBench({});
    const [card] = buildCards(bench, terms);
    const worked = workMinutes(bench, ['survey_work', 'quote_work']);
    expect(card?.minutes).toBeCloseTo(worked, 9);
  });

  test.each(demoRecipes)(
    '%s: whatever is picked for the build stands on the card once, with the same amount',
    (recipe) => {
      const bench = demoBench(
        { recipe, sizes: ['T05'], job: { public_site: 'yes', delivery_distance: '36 km' } },
        records,
      );
      const [card] = buildCards(bench, terms);
      const [list] = pickLists(bench, records, plainDisplay);
      const onCard = card?.steps.flatMap(({ goods }) => goods) ?? [];
      const bare = (amount: string) => amount.replace('\u00a0each', '');
      const picked = new Set(list?.rows.map(({ line, amount }) => `${line} ${bare(amount)}`));
      const packed = onCard
        .filter(({ line }) => line !== 'delivery_need')
        .map(({ line, amount }) => `${line} ${amount}`);
      expect([new Set(packed), packed.length]).toEqual([picked, picked.size]);
    },
  );

  test('a line that a house added stands in its section, or besides', () => {
    const bench = demoBench({ recipe: 'H1', sizes: ['T05'] }, records);
    const { lines, ...input } = bench.input();
    const [first] = lines.filter((line) => line.name === 'pods_need');
    if (!first) throw new Error('no pods');
    const { place: _, ...unplaced } = first;
    const own = {
      ...unplaced,
      id: 'own',
      name: 'foam_mat_need',
      label: 'Foam mat',
      section: 'Drainage',
      group: 'media',
      text: '1 each',
    };
    const odd = { ...own, id: 'odd', name: 'gift_need', label: 'Gift', section: 'Gifts', group: 'work' };
    const again = demoBench({ recipe: 'H1', sizes: ['T05'] }, records);
    again.update({ ...input, lines: [...lines, own, odd] });
    const [card] = buildCards(again, terms);
    again.close();
    const titleOf = (line: string) => card?.steps.find(({ goods }) => goods.some((each) => each.line === line))?.title;
    expect([titleOf('foam_mat_need'), titleOf('gift_need')]).toEqual(['Drainage', 'Besides']);
  });

  test('what has no figure yet says so, and its minutes are left out', () => {
    const drainage = cardOf({ drainage: '' }).steps.find(({ title }) => title === 'Drainage');
    expect([drainage?.goods[0]?.amount, drainage?.minutes]).toEqual(['needs a figure', undefined]);
  });
});
