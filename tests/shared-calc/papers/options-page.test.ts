import { describe, expect, test } from 'vitest';
import { optionsPage } from '#shared-calc/papers/options-page.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { DEMO_DAY, demoBench, demoPricing, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const pricing = demoPricing(records);

describe('optionsPage', () => {
  test('sizes side by side: T05 and T07, Full, flat', () => {
    const bench = demoBench({ sizes: ['T05', 'T07'], job: { soil_rise: '0 mm' } }, records);
    const [five, seven] = optionsPage({ bench, pricing, records, on: DEMO_DAY });
    bench.close();
    expect(five).toEqual({
      size: 'T05',
      called: 'T05',
      tank: 'Rectangle 600 × 445 × 600',
      builds: 1,
      price: '1601.41',
      deposit: '645.00',
      missing: [],
      guesses: [],
      weightKg: 50.5,
      // From 8 March: plants cleared on 15 April, then 21 days of settling in.
      readyOn: '2027-05-06',
      because: 'plant quarantine',
      plants: 16,
      // 2 lamps of 24 W for 12 h: 0.576 kWh a day; 2 nozzles, 135 mL a day.
      kWhPerMonth: 17.5,
      waterLPerMonth: 4.1,
      careVisits: 5,
      drain: 'every 3 weeks',
      refill: 'every 14 days',
    });
    // Two lamps of 36 W; scenario figures: drained every 6 weeks.
    expect([seven?.plants, seven?.kWhPerMonth, seven?.drain]).toEqual([23, 26.3, 'every 6 weeks']);
  });

  test('what running costs a month, where the workshop has what is paid', () => {
    const shop = workshopOf(records);
    const paying = withRecords(records, 'workshop', [{ ...shop, electricityPerKwh: 0.315, waterPerL: 0.0042 }]);
    const bench = demoBench({ sizes: ['T05'], job: { soil_rise: '0 mm' } }, paying);
    const [option] = optionsPage({ bench, pricing, records: paying, on: DEMO_DAY });
    bench.close();
    // 0.576 kWh * 365/12 = 17.52 kWh at 0.315; 0.135 L * 365/12 = 4.106 L at 0.0042.
    expect([option?.powerCostPerMonth, option?.waterCostPerMonth]).toEqual(['5.52', '0.02']);
  });

  test('what a recipe or a bench does not know is left out, and the price says what it waits for', () => {
    const bench = demoBench({ recipe: 'H4', sizes: ['T05'], job: { inside_length: '' } }, records);
    const [option] = optionsPage({ bench, pricing, records, on: DEMO_DAY });
    bench.close();
    expect(option?.weightKg).toBeUndefined();
    expect(option?.missing.map(({ of, label }) => [of, label])).toEqual([['T05', 'T05, inside length']]);
  });
});
