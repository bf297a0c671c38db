import { describe, expect, test } from 'vitest';
import { today } from '#electron/service/today.ts';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

/* What suppliers ask, as a builder works it from the command line; each file has one book, used in order. */

const { book } = useDemoBook();

async function ask(...argv: readonly string[]): Promise<unknown> {
  return lwJson(...argv, '--book', book());
}

async function put(kind: string, record: Readonly<Record<string, unknown>>): Promise<void> {
  await ask('act', 'put', JSON.stringify({ kind, record }));
}

const clay = ['--sizes', 'T03,T07,T08', '--materials', 'M01'];

describe('a supplier raises its prices', () => {
  test('Hollin by 12 %: each pack to the coin, half up; only tried, nothing is written', async () => {
    const tried = await ask('prices', 'rise', 'S-hollin', '12%', '--from', today(), '--try');
    expect(tried).toMatchObject({
      packs: expect.arrayContaining([
        { pack: 'M01-10', from: '9.80', to: '10.98' },
        { pack: 'M01-45', from: '31.50', to: '35.28' },
        { pack: 'M04-6', from: '7.20', to: '8.06' },
        { pack: 'M05-70', from: '24.50', to: '27.44' },
      ]) as unknown,
      touched: [],
    });
    expect(await ask('run', ...clay)).toMatchObject({ together: '51.10' });
  });

  test('clay from today: a quote of a T07 issued today at 16.50 of clay is eaten by 1.99', async () => {
    await ask('job', 'new', '--title', 'Hall', '--sizes', 'T07');
    await ask('quote', '--job', 'J02', '--issue');
    const before = await ask('needs', '--job', 'J02', '--materials', 'M01');
    const risen = await ask('prices', 'rise', 'S-hollin', '12%', '--from', today(), '--materials', 'M01');
    const after = await ask('needs', '--job', 'J02', '--materials', 'M01');
    expect([before, after]).toMatchObject([{ total: '16.50' }, { total: '18.49' }]);
    const touched = [
      {
        job: 'J02',
        quote: 'Q-0001A',
        state: 'quoted',
        cost: { from: '1320.63', to: '1322.62' },
        net: { from: '1940.36', to: '1943.68' },
        margin: { from: '619.73', to: '617.74' },
      },
    ];
    const packs = [
      { pack: 'M01-10', from: '9.80', to: '10.98' },
      { pack: 'M01-45', from: '31.50', to: '35.28' },
    ];
    expect(risen).toEqual({ packs, touched });
    expect(await ask('prices', 'touched')).toEqual({ packs, touched });
  });

  test('the fall back is one change, too', async () => {
    await ask('prices', 'rise', 'S-hollin', '-10.7143 %', '--from', today(), '--materials', 'M01');
    expect(await ask('prices', 'touched', '--on', today())).toEqual({ packs: [], touched: [] });
  });

  test.each([
    [['S-holin', '12%'], 'No supplier called S-holin. Did you mean S-hollin?'],
    [['S-hollin', '12%', '--materials', 'M25a'], 'S-hollin sells no pack of M25a.'],
    [['S-hollin', '12%', '--from', '2020-01-01'], 'S-hollin sells nothing that has a price on 1 January 2020.'],
    [['S-hollin', '12 L'], 'Rise is in %, a share; "12 L" does not fit.'],
  ])('prices rise %j is refused: %s', async (argv, says) => {
    const { code, err } = await lw('prices', 'rise', ...argv, '--book', book());
    expect([code, err.trim()]).toEqual([1, says]);
  });
});

describe('two suppliers of one material', () => {
  test('57.134 L of clay alone: the second lands for 51.00, Hollin for 58.60', async () => {
    const terms = { carriageCoins: 900, freeFromCoins: 5000, leadDays: 5 };
    await put('supplier', { id: 'S-quarry', name: 'Quarry Yard', sells: 'clay', note: '', ...terms });
    await put('pack', { id: 'M01-20', material: 'M01', amount: 20, supplier: 'S-quarry', article: 'QY-20' });
    await put('packPrice', { id: 'M01-20@now', pack: 'M01-20', from: today(), priceCoins: 1700 });
    expect(await ask('run', ...clay)).toMatchObject({
      landedTogether: '51.00',
      proven: true,
      materials: [
        {
          material: 'M01',
          offers: [
            { supplier: 'S-hollin', coins: '51.10', landed: '58.60', taken: false, secondBest: true },
            {
              supplier: 'S-quarry',
              packs: [{ size: 20, unit: 'L', count: 3, each: '17.00' }],
              coins: '51.00',
              landed: '51.00',
              taken: true,
              secondBest: false,
            },
          ],
        },
      ],
    });
  });

  test('a quote stays priced by the usual supplier', async () => {
    expect(await ask('quote', '--sizes', 'T07')).toMatchObject({ cost: '1320.63' });
  });
});

describe('whose hour', () => {
  test('600 min of the builder, 90 of the fitter, 50 of the grower: 12.5 h, 523.33', async () => {
    const line = (name: string, minutes: number, who?: string) => ({
      kind: 'line',
      record: {
        id: `HW.${name}`,
        recipe: 'HW',
        order: `0${String(900 - minutes).padStart(3, '0')}1`,
        section: 'Work',
        name,
        role: 'work',
        unit: 'min',
        text: `${minutes} min`,
        note: '',
        shownFirst: false,
        inset: false,
        perJob: true,
        ...(who !== undefined && { who }),
      },
    });
    const records = [
      { kind: 'recipe', record: { id: 'HW', title: 'Work alone', note: '' } },
      line('build_work', 600),
      line('lamp_work', 90, 'R-fitter'),
      line('culture_work', 50, 'R-grower'),
    ];
    await ask('act', 'putAll', JSON.stringify({ records }));
    expect(await ask('quote', '--sizes', 'T07', '--recipe', 'HW')).toMatchObject({
      hours: 12.5,
      lines: [{ group: 'work', cost: '523.33' }],
      people: [
        { who: 'R-builder', label: 'Builder', hours: 10 },
        { who: 'R-fitter', label: 'Fitter', hours: 1.5 },
        { who: 'R-grower', label: 'Grower', hours: 0.833_333_333_333_3 },
      ],
    });
  });

  test('a rate by the kilometre is nobody’s hour', async () => {
    await put('rate', { id: 'R-road', label: 'Road', coins: 45, per: 'km' });
    const fields = { line: 'HW.lamp_work', fields: { who: 'R-road' } };
    const { code, err } = await lw('act', 'changeLine', JSON.stringify(fields), '--book', book());
    expect([code, err.trim()]).toEqual([1, 'Road is not paid by the hour.']);
  });
});
