import { describe, expect, test } from 'vitest';
import { handoverCards, type HandoverCard } from '#shared-calc/papers/handover-card.ts';
import { animalsInCard, watchCards } from '#shared-calc/papers/watch-card.ts';
import { careDates } from '#shared-calc/prepare/care-calendar.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { DEMO_DAY, demoBench } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { jobOf, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { workedJob } from '#tests/worked-job.ts';
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
      ['Animals', "No kind named: ceiling, floor and band are the house's."],
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

  test('a workshop that promises nothing for plants has only its own terms on it', () => {
    const { bench, job } = workedJob(libraryJob(), jobOf(libraryJob(), 'J02'), DEMO_DAY);
    const workshop = { terms: 'Seals are ours for a year.' };
    const [card] = handoverCards(bench, { job, handover: '2027-04-28', care: [], workshop, display: plainDisplay });

    expect(card?.terms).toEqual(['Seals are ours for a year.']);
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
      'On the hottest day the recipe expects 29.3\u00a0degC, up to 33.0\u00a0degC in the tank.',
      "No kind named: ceiling, floor and band are the house's.",
    ]);
  });
});

describe('animalsInCard', () => {
  test('animals a week after the build are looked at six times; three weeks after, as usual', () => {
    const bench = demoBench({ sizes: ['T07'] }, records);
    const terms = { build: '2027-04-07', job: school, bench, display: plainDisplay };
    const soon = animalsInCard({ ...terms, settleInDays: 7 });
    const later = animalsInCard({ ...terms, settleInDays: 21 });
    bench.close();
    expect([soon.animalsIn, soon.looks.map(({ day }) => day), later.animalsIn, later.looks]).toEqual([
      '2027-04-14',
      [1, 3, 7, 14, 21, 28],
      '2027-04-28',
      [],
    ]);
  });
});

describe('a card of a size that names its kind', () => {
  const named = done(libraryJob(), 'setAnimals', { job: 'J02', column: 'T05', animalKind: 'A5', animals: 2 }).records;
  const { bench, place, job } = workedJob(named, jobOf(named, 'J02'), DEMO_DAY);
  const terms = { job, handover: '2027-06-30', care: [], workshop: { terms: '' }, display: plainDisplay };
  const [card] = handoverCards(bench, terms);

  test('says the animals, their band, from when people act and above what it is an emergency', () => {
    expect(card?.keep.slice(0, 3)).toEqual([
      ['Animals', '2 of Dry gecko'],
      ['Temperature', '20\u00a0degC to 33\u00a0degC'],
      ['Humidity', '35\u00a0% to 60\u00a0%'],
    ]);
    expect(card?.notNormal[0]).toMatchObject({
      sign: 'From 31\u00a0degC on',
      act: expect.stringContaining('Above 33\u00a0degC is an emergency.') as unknown,
    });
  });

  test('its harm and its papers are cautions, with who is asked and where they are from', () => {
    const source = 'common practice, invented for the demo, within common practice';

    expect([card?.audience.at(-1), card?.protection[0]]).toEqual([
      {
        id: null,
        about: 'Dry gecko',
        says: 'Dry gecko: Carriers of salmonella look healthy.',
        decides: 'Public-health office',
        source,
      },
      {
        id: null,
        about: 'Dry gecko',
        says: 'Dry gecko: Ask for its kind and where it was bred.',
        decides: 'Wildlife authority',
        source,
      },
    ]);
  });

  test('the watch and the day they go in say the same', () => {
    const [watch] = watchCards(bench, plainDisplay);
    const soon = animalsInCard({ build: '2027-04-07', settleInDays: 7, job, bench, display: plainDisplay });

    expect(watch?.band).toEqual({ lowestC: 20, highestC: 33, driest: 35, dampest: 60 });
    expect(watch?.expected.join(' ')).not.toContain('No kind named');
    expect(soon.sizes).toEqual([
      {
        called: 'T05',
        animals: '2 of Dry gecko',
        above: 'From 31\u00a0degC on',
        emergency: 'Above 33\u00a0degC is an emergency.',
      },
    ]);
  });

  test('its checks stand behind those of the place; plants only have none, and harm nobody', () => {
    const states = (of: typeof place) => of('T05').map(({ use, state }) => `${use} ${state}`);
    const bare = done(named, 'setAnimals', { job: 'J02', column: 'T05', animalKind: null, animals: 0 }).records;
    const plants = workedJob(bare, jobOf(bare, 'J02'), DEMO_DAY).place;

    expect(states(place).slice(-3)).toEqual(['animalKind holds', 'animalRoom holds', 'animalGroup holds']);
    expect(states(plants).slice(0, 2)).toEqual(['underFives holds', 'weakImmunity holds']);
    expect(states(plants).some((each) => each.startsWith('animal'))).toBe(false);
  });
});
