import { describe, expect, test } from 'vitest';
import { handoverCards, type HandoverCard } from '#shared-calc/papers/handover-card.ts';
import { animalsInCard, watchCards } from '#shared-calc/papers/watch-card.ts';
import { careDates } from '#shared-calc/prepare/care-calendar.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoBench } from '#tests/demo-bench.ts';
import { mondayToFriday } from '#tests/shared-calc/prepare/demo-plan.ts';
import { records, school } from './all-cards.ts';

function cardOf(recipe: string, sizes: readonly string[], job: Readonly<Record<string, string>> = {}): HandoverCard {
  const bench = demoBench({ recipe, sizes, job }, records);
  const [card] = handoverCards(bench, {
    job: school,
    handover: '2027-04-28',
    care: careDates('2027-04-28', mondayToFriday),
    workshop: workshopOf(records),
    display: plainDisplay,
  });
  bench.close();
  if (!card) throw new Error('no card');
  return card;
}

describe('handoverCards', () => {
  test('T05 Full says what it is kept at and what is set', () => {
    expect(cardOf('H1', ['T05']).keep).toEqual([
      ['Temperature', '18\u00a0degC to 27\u00a0degC'],
      ['Humidity', '75\u00a0% to 95\u00a0%'],
      ['Light', '12\u00a0h a day, on the timer'],
      ['Mist', '15\u00a0s each time, 3 a day'],
      ['Vent strip', '25\u00a0mm, always open'],
      ['Weight filled', expect.stringMatching(/^\d\d\.\d\d\u00a0kg \(\d\d\.\d\d to \d\d\.\d\d\), do not move it$/)],
    ]);
  });

  test('a recipe with a band says the band', () => {
    expect(cardOf('H2', ['T05']).keep.find(([what]) => what === 'Humidity')?.[1]).toBe('65\u00a0% to 90\u00a0%');
  });

  test('draining and refilling stand among the tasks as often as the recipe reckons them, the most frequent first', () => {
    const whens = cardOf('H1', ['T07']).tasks.map(({ when }) => when);
    expect(whens).toEqual([
      'Every day',
      'Every week',
      'Every 14 days',
      'Every month',
      'Every 6 weeks',
      'Once after 11 weeks',
      'Every 24 weeks',
      'Every year',
    ]);
  });

  test('a quarantine tank without nozzles is misted by hand', () => {
    const card = cardOf('H4', ['T01']);
    expect(card.keep.some(([what]) => what === 'Mist')).toBe(false);
    expect(card.tasks[0]?.acts[1]).toBe('Mist with low-mineral water where it looks dry.');
  });

  test('what falls due equally often stands together', () => {
    const tasks = cardOf('H1', ['T01'], { drain_days: '15 d' }).tasks.filter(({ when }) => when === 'Every 14 days');
    expect(tasks).toEqual([
      {
        when: 'Every 14 days',
        acts: [
          'Drain the water below the mesh, to the sewer; sooner where it smells sour.',
          'Empty, clean and rinse the can, then refill it with low-mineral water.',
        ],
      },
    ]);
  });

  test('a sign that says a caution in full names one of the card', () => {
    const { notNormal, cautions } = cardOf('H1', ['T05']);
    const named = notNormal.flatMap(({ caution }) => caution ?? []);
    expect([named, named.filter((id) => !cautions.some((each) => each.id === id))]).toEqual([
      ['tooWarm', 'drainage', 'death'],
      [],
    ]);
  });

  test.each([
    ['basic', 14],
    ['full', 30],
    ['show', 90],
  ])('plants of the %s kit are replaced for %i days, as the quote says', (kit, days) => {
    expect(cardOf('H1', ['T05'], { kit }).terms[0]).toBe(`Plants that die within ${days} days are replaced once.`);
  });

  test('who is near it beside the caution that tells of everybody', () => {
    expect(cardOf('H1', ['T05']).audience.map(({ says }) => says.slice(0, 22))).toEqual(['Under-fives come here:']);
  });

  test('the first year of visits and the house’s own terms close it', () => {
    const { visits, terms } = cardOf('H1', ['T05']);
    expect([visits[0], terms.at(-1)]).toEqual([
      { act: 'call', date: '2027-05-05' },
      'Seals and build are ours for 12 months. Cultures are started again once within 60 days.',
    ]);
  });
});

describe('watchCards', () => {
  test('readings run over 72 hours, often on the first day', () => {
    const bench = demoBench({ sizes: ['T07'], job: { soil_rise: '0 mm', screen_under_lamps: 'yes' } }, records);
    const [card] = watchCards(bench, plainDisplay);
    bench.close();
    expect([card?.hours[0], card?.hours.at(-1), card?.band]).toEqual([
      0,
      72,
      { lowestC: 18, highestC: 27, driest: 75, dampest: 95 },
    ]);
    expect(card?.expected).toEqual([
      'On the hottest day the recipe expects 29.3\u00a0degC, up to 33.0\u00a0degC in the tank. The range covers lamp heat and glass. Sun counts only where its area is given; a heater or hot air under the lamp does not. The watch reading decides.',
    ]);
  });
});

describe('animalsInCard', () => {
  test('animals a week after the build are looked at six times; three weeks after, as usual', () => {
    const soon = animalsInCard({ build: '2027-04-07', settleInDays: 7, job: school });
    const later = animalsInCard({ build: '2027-04-07', settleInDays: 21, job: school });
    expect([soon.animalsIn, soon.looks.map(({ day }) => day), later.animalsIn, later.looks]).toEqual([
      '2027-04-14',
      [1, 3, 7, 14, 21, 28],
      '2027-04-28',
      [],
    ]);
  });
});
