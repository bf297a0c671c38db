import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

/* What the command line says beside its figures: a figure outside what the sum knows, an act that can hurt. */

const { book } = useDemoBook('2027-03-08');

const Minded = z.object({
  warnings: z.array(z.strictObject({ says: z.string(), decides: z.string().min(1) })).default([]),
  cautions: z.array(
    z.strictObject({ id: z.string(), says: z.string(), decides: z.string().min(1), source: z.string().min(1) }),
  ),
});

async function minded(...argv: readonly string[]) {
  const ofBook = ['work', 'treat', 'functions'].includes(argv[0] ?? '') ? [] : ['--book', book()];
  return Minded.parse(await lwJson(...argv, ...ofBook));
}

describe('work', () => {
  test.each([
    [
      'lift_crew(83 kg)',
      { says: 'Do not lift. Build in place or use a trolley.', decides: 'Crew leader' },
      ['lifting', 'glassEdges'],
    ],
    [
      'steam_temp(650 m, 25 psi)',
      {
        says: 'Above the 15 psi class of small vessels: only as the maker of the vessel says.',
        decides: 'Whoever services the vessel',
      },
      ['steamVent', 'steamOpening'],
    ],
    [
      'hold_time(6, 1.5 min, 121.1 degC, 10 K, 60 degC)',
      { says: 'Too far from the reference to trust.', decides: 'Grower' },
      ['steamVent', 'steamOpening'],
    ],
    ['layer_volume(0.4 m2, 500 mm)', { says: 'Depth over 400 mm: is that millimetres?', decides: 'Builder' }, []],
  ])('%s says what is wrong with it, and who decides', async (rule, warning, cautions) => {
    const told = await minded('work', rule);
    expect(told.warnings).toEqual([warning]);
    expect(told.cautions.map(({ id }) => id)).toEqual(cautions);
    const { out } = await lw('work', rule);
    expect(out).toContain(`Warning: ${warning.says} (${warning.decides} decides)`);
  });

  test('a function inside another warns too; one in a branch that is not taken does not', async () => {
    expect((await minded('work', 'layer_volume(0.4 m2, 500 mm) / 2')).warnings).toHaveLength(1);
    expect((await minded('work', 'if(1 > 2, layer_volume(0.4 m2, 500 mm), 3 L)')).warnings).toEqual([]);
  });

  test('a figure that is as it should be has no warning', async () => {
    expect(await minded('work', 'layer_volume(0.4 m2, 40 mm)')).toEqual({ warnings: [], cautions: [] });
  });
});

describe('whole answers', () => {
  test.each([
    [['treat', '--leaves', '43.51 L', '--way', 'boil', '--aim', 'clean'], 'boilingWater'],
    [['cultures', '--jobs', 'J01', '--on', '2027-03-08'], 'microfauna'],
    [['cultures', '--kind', 'C5', '--flies', '1400', '--on', '2027-03-08'], 'feeding'],
    [['prepare', '--job', 'J01', '--on', '2027-03-08'], 'foamAndSealant'],
    [['bench', '--sizes', 'T07'], 'lifting'],
    [['quote', '--sizes', 'T07', '--on', '2027-03-08'], 'floorVerdict'],
    [['needs', '--sizes', 'T07', '--on', '2027-03-08'], 'mineralDust'],
    [['functions', 'steam_temp'], 'steamOpening'],
    [['paper', 'build', '--sizes', 'T08', '--on', '2027-03-08'], 'leakTest'],
  ])('%j has %s, in JSON and in the table', async (argv, id) => {
    const { cautions } = await minded(...argv);
    const caution = cautions.find((each) => each.id === id);
    expect(caution).toBeDefined();
    const ofBook = ['work', 'treat', 'functions'].includes(argv[0] ?? '') ? [] : ['--book', book()];
    const { out } = await lw(...argv, ...ofBook);
    expect(out.replaceAll('\u00a0', ' ')).toContain(caution?.says.replaceAll('\u00a0', ' '));
  });

  test('the leak test of T08 says its own litres and its own weight', async () => {
    const { cautions } = await minded('paper', 'build', '--sizes', 'T08', '--on', '2027-03-08');
    expect(cautions.find(({ id }) => id === 'leakTest')?.says).toMatch(
      /^The test takes 118\.8\d?.L of water: glass and water together weigh 17\d(?:\.\d+)?.kg\./,
    );
  });

  test('every tub that stands says what to mind with its kind', async () => {
    await lw('tub', 'start', 'C1', '--on', '2027-03-01', '--book', book());
    const tubs = z.array(Minded).parse(await lwJson('tub', 'list', '--on', '2027-03-08', '--book', book()));
    expect(tubs.map(({ cautions }) => cautions.map(({ id }) => id))).toEqual([
      ['microfauna', 'neverRelease', 'sentLive', 'denseCup'],
    ]);
  });

  test('every box of a bench says what its functions warn of', async () => {
    const Bench = z.object({
      columns: z.array(z.object({ lines: z.record(z.string(), z.object({ warnings: Minded.shape.warnings })) })),
    });
    const { columns } = Bench.parse(
      await lwJson('bench', '--sizes', 'T08', '--lines', 'crew_filled,drainage', '--book', book()),
    );
    expect(columns[0]?.lines).toEqual({
      crew_filled: {
        warnings: [{ says: 'Do not lift. Build in place or use a trolley.', decides: 'Crew leader' }],
      },
      drainage: { warnings: [] },
    });
  });
});
