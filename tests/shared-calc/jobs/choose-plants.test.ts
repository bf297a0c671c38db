import { unasked } from '#shared-calc/fields/survey.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choosePlants, pricedPlants, type PlantPlace } from '#shared-calc/jobs/choose-plants.ts';
import { orderPlants, plantLines, type PlantLine } from '#shared-calc/jobs/order-plants.ts';
import { paneCuts } from '#shared-calc/jobs/pane-cuts.ts';
import { plantNeeds, plantPlace } from '#shared-calc/jobs/plant-place.ts';
import { plantClasses } from '#shared-calc/fields/plant.ts';
import type { AnimalKind, Plant } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoBench, demoPrices, demoRecords } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { workedJob } from '#tests/worked-job.ts';
import { jobOf, libraryJob, withRecords } from './demo-jobs.ts';

const book = pricedPlants(demoRecords(), demoPrices());
const place: PlantPlace = {
  light: 5.5,
  heightMm: 450,
  lengthMm: 900,
  floorM2: 0.4005,
  dry: false,
  avoidHarm: false,
  animalCrushes: false,
};

/** Ids of the chosen plants with counts, of the alternates, and of the excluded ones with the reason. */
function chosenOf(of: Plant['class'], count: number, change: Partial<PlantPlace> = {}) {
  return choosePlants(book, [{ class: of, count }], { ...place, ...change }).map((each) => ({
    chosen: each.chosen.map(({ plant, count: some, shade }) => `${some} ${plant.id}${shade ? ' shade' : ''}`),
    alternates: each.alternates.map((plant) => plant.id),
    ruledOut: each.ruledOut.map(({ plant, why }) => `${plant.id} ${why}`),
    short: each.short,
  }))[0];
}

describe('choosePlants', () => {
  test('the cheapest that the light suits, two species from four plants on, the rest as alternates', () => {
    expect(chosenOf('ground', 5)).toEqual({
      chosen: ['3 P04', '2 P05'],
      alternates: ['P06', 'P07'],
      ruledOut: [],
      short: 0,
    });
    expect(chosenOf('feature', 2)).toEqual({
      chosen: ['2 P11'],
      alternates: ['P12'],
      ruledOut: ['P15 too wet'],
      short: 0,
    });
  });

  test('for small children and public rooms nothing with sap or oxalates, not even as an alternate', () => {
    expect(chosenOf('climber', 3, { avoidHarm: true })).toEqual({
      chosen: ['3 P02'],
      alternates: [],
      ruledOut: ['P01 harm', 'P03 harm'],
      short: 0,
    });
    expect(chosenOf('mid', 4, { avoidHarm: true })?.ruledOut).toEqual(['P09 harm']);
  });

  test('too dark, too tall, too small a floor and a heavy animal each rule out', () => {
    expect(chosenOf('feature', 1, { light: 4.9 })?.ruledOut).toEqual(['P12 too dark', 'P15 too wet']);
    expect(chosenOf('feature', 1, { heightMm: 340 })?.ruledOut).toEqual(['P11 too tall', 'P15 too wet']);
    expect(chosenOf('feature', 1, { floorM2: 0.198 })?.ruledOut).toEqual(['P11 floor too small', 'P15 too wet']);
    expect(chosenOf('ground', 4, { animalCrushes: true })).toEqual({
      chosen: ['4 P07 shade'],
      alternates: [],
      ruledOut: ['P04 crushed', 'P05 crushed', 'P06 crushed'],
      short: 0,
    });
  });

  test('a plant that it is too bright for serves last, and stands in shade', () => {
    expect(chosenOf('ground', 1, { light: 6.72 })?.chosen).toEqual(['1 P04 shade']);
  });

  test('where nothing serves, it says how many are short', () => {
    expect(chosenOf('epiphyte', 3, { dry: true })).toEqual({
      chosen: [],
      alternates: [],
      ruledOut: ['P13 too dry', 'P14 too dry'],
      short: 3,
    });
  });

  test('as many plants are chosen or short as are asked for, and nothing twice', () => {
    const any = fc.record({
      light: fc.double({ min: 1, max: 12, noNaN: true }),
      heightMm: fc.integer({ min: 100, max: 900 }),
      lengthMm: fc.integer({ min: 300, max: 1200 }),
      floorM2: fc.double({ min: 0.05, max: 1, noNaN: true }),
      dry: fc.boolean(),
      avoidHarm: fc.boolean(),
      animalCrushes: fc.boolean(),
    });
    fc.assert(
      fc.property(any, fc.constantFrom(...plantClasses), fc.integer({ min: 1, max: 30 }), (where, of, count) => {
        const [each] = choosePlants(book, [{ class: of, count }], where);
        const total = each?.chosen.reduce((sum, one) => sum + one.count, each.short);
        const ids = [...(each?.chosen ?? []), ...(each?.ruledOut ?? [])].map(({ plant }) => plant.id);
        expect(total).toBe(count);
        expect([...ids, ...(each?.alternates ?? []).map((plant) => plant.id)].toSorted()).toEqual(
          book.filter((plant) => plant.class === of).map((plant) => plant.id),
        );
      }),
    );
  });
});

/** Asked, and neither small children nor strangers come near. */
const nobody = { ...unasked, underFives: 'no', publicRoom: 'no' } as const;

describe('plantPlace', () => {
  test('a size’s own figures: light of its lamps, height over the dam, floor', () => {
    const bench = demoBench({ sizes: ['T07'], job: { screen_under_lamps: 'yes' } });
    const { light, ...rest } = plantPlace(bench, 'T07', { survey: nobody });
    bench.close();
    expect(light.toFixed(2)).toBe('6.72');
    expect(rest).toEqual({ ...place, light: undefined });
  });

  test.each([
    ['asked, and neither small children nor strangers', {}, false],
    ['children under five', { underFives: 'yes' }, true],
    ['nobody asked for children', { underFives: 'not asked' }, true],
    ['a public room', { publicRoom: 'yes' }, true],
    ['nobody asked whether it is public', { publicRoom: 'not asked' }, true],
  ] as const)('%s: harmful plants avoided, %s', (_, answers, avoided) => {
    const bench = demoBench({ sizes: ['T05'] });
    const survey = { ...nobody, ...answers };
    expect(plantPlace(bench, 'T05', { survey }).avoidHarm).toBe(avoided);
    bench.close();
  });

  test('a public site on the bench is one whatever was asked, and the dry season is dry', () => {
    const open = demoBench({ sizes: ['T05'], job: { public_site: 'yes' } });
    expect(plantPlace(open, 'T05', { survey: nobody }).avoidHarm).toBe(true);
    open.close();
    const dry = demoBench({ recipe: 'H3', sizes: ['T05'] });
    expect(plantPlace(dry, 'T05', { survey: nobody }).dry).toBe(true);
    dry.close();
  });

  test.each<[string, Partial<AnimalKind>, number | undefined, boolean]>([
    ['a kind that does', { crushesPlants: true }, 4, true],
    ['a kind that does not', { crushesPlants: false }, 4, false],
    ['a kind of which nobody knows', { crushesPlants: undefined }, 4, true],
    ['a number that nobody has said', { crushesPlants: true }, undefined, true],
    ['plants only', { crushesPlants: true }, 0, false],
  ])('%s: small plants are left out', (_, figures, animals, crushed) => {
    const kinds = [...libraryJob().animalKind.values()].map((kind) => ({ ...kind, ...figures }));
    const named = { job: 'J02', column: 'T05', animalKind: 'A1', ...(animals !== undefined && { animals }) };
    const records = done(withRecords(libraryJob(), 'animalKind', kinds), 'setAnimals', named).records;
    const { planted } = workedJob(records, jobOf(records, 'J02'), DEMO_DAY);

    expect(plantPlace(planted.bench, 'T05', planted).animalCrushes).toBe(crushed);
  });

  // Plants of a T07 in the Full kit, by the trade's own sums: 6, 6, 2, 5, 4.
  test('T07 Full asks for 6 ground, 6 mid, 2 feature, 5 climbers, 4 epiphytes', () => {
    const bench = demoBench({ sizes: ['T07'] });
    expect(plantNeeds(bench, 'T07').map(({ count }) => count)).toEqual([6, 6, 2, 5, 4]);
    bench.close();
  });
});

describe('orderPlants', () => {
  test('species of all sizes together, with alternates that serve in every size', () => {
    const bench = demoBench({ sizes: ['T03', 'T07'] });
    const orders = orderPlants([{ bench, survey: unasked }], book);
    bench.close();
    const rows = orders.map(({ class: of, species, alternates, short }) => {
      return [of, species.map(({ plant, count }) => `${count} ${plant.id}`), alternates.map(({ id }) => id), short];
    });
    expect(rows).toEqual([
      ['ground', ['6 P04', '3 P06'], ['P07', 'P05'], 0],
      ['mid', ['9 P10'], ['P08'], 0],
      ['feature', ['1 P12', '2 P11'], [], 0],
      ['climber', ['8 P02'], [], 0],
      ['epiphyte', ['4 P14', '2 P13'], [], 0],
    ]);
  });
});

describe('paneCuts', () => {
  test('the panes of every size as the cutter needs them, for all builds', () => {
    const bench = demoBench({ sizes: ['T07', 'T05'] });
    expect(paneCuts(bench)).toEqual([
      { column: 'T07', pieces: 2, lengthMm: 447, depthMm: 418, glassMm: 4 },
      { column: 'T05', pieces: 1, lengthMm: 597, depthMm: 418, glassMm: 4 },
    ]);
    bench.close();
  });
});

describe('plantLines', () => {
  const plant = (id: string) => {
    const found = book.find((each) => each.id === id);
    if (!found) throw new Error(`no plant ${id}`);
    return found;
  };
  const species = [
    { plant: plant('P13'), count: 13, shade: false },
    { plant: plant('P14'), count: 2, shade: false },
  ];
  const sums = (lines: readonly PlantLine[]) => [
    lines.map((line) => [line.plant.id, line.count, line.coins]),
    lines.reduce((sum, { coins }) => sum + coins, 0),
    lines.reduce((sum, { classCoins }) => sum + classCoins, 0),
  ];

  test('13 P13 and 2 P14 cost 76.00 at their own prices, where a quote counts 58.50: 17.50 over', () => {
    expect(sums(plantLines({ species }, { count: 15, classEachCoins: 390 }))).toEqual([
      [
        ['P13', 13, 6760],
        ['P14', 2, 840],
      ],
      7600,
      5850,
    ]);
  });

  test('what is there already is taken off the last; a plant without a price costs what its class does', () => {
    const { priceCoins: _, ...unpriced } = plant('P13');
    const first = [{ plant: unpriced, count: 13, shade: false }, ...species.slice(1)];
    expect(sums(plantLines({ species: first }, { count: 10, classEachCoins: 390 }))).toEqual([
      [['P13', 10, 3900]],
      3900,
      3900,
    ]);
  });
});
