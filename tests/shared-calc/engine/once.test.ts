import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { workOnce } from '#shared-calc/engine/once.ts';
import { demoBench, demoRecipes, demoRecords } from '#tests/demo-bench.ts';
import { comparedRules, ruled } from './compared-rules.ts';

describe('workOnce', () => {
  const records = demoRecords();
  const tanks = [...records.tank.keys()];
  const kits = [...demoRecipes.map((recipe) => [recipe, 'full'] as const), ['H1', 'basic'], ['H1', 'show']] as const;

  test.each(kits)(
    'every line of %s, kit %s, over every tank of the book comes to what the graph engine says',
    (recipe, kit) => {
      const live = demoBench({ recipe, sizes: tanks, job: { kit } }, records);
      const once = onceBench(live.input());
      const names = live.input().lines.map((line) => line.name);
      const apart = tanks.flatMap((tank) =>
        names.flatMap((name) => {
          const [one, other] = [live.box(tank, name), once.box(tank, name)];
          const same = Object.is(one.value, other.value) && JSON.stringify(one) === JSON.stringify(other);
          return same ? [] : [[tank, name, one.value, other.value]];
        }),
      );
      expect([names.length > 10, apart]).toEqual([true, []]);
    },
  );

  test('lines that wait, that cannot be read and that read one another say the same by either', () => {
    const job = { litter: '', drain_gap: 'soil_front + 1 mm', soil_front: 'drain_gap - 1 mm', moisture_start: '3 kg' };
    const live = demoBench({ sizes: ['T03', 'T07'], job }, records);
    const once = onceBench(live.input());
    const { lines } = live.input();
    const both = [live, once].map((bench) => lines.map(({ name }) => bench.box('T07', name)));
    expect(both[1]).toEqual(both[0]);
    const states = new Set(both[1]?.map(({ state }) => state));
    expect([...states]).toEqual(expect.arrayContaining(['waiting', 'loop', 'needs a figure']));
  });

  test('a chain of fifty thousand lines is worked, whichever end is written first', () => {
    const lines = Array.from({ length: 50_000 }, (_, at) => [`l${at}`, at === 0 ? '1' : `l${at - 1} + 1`] as const);
    const contents = new Map([...lines].toReversed().map(([name, text]) => [name, ruled(text)] as const));
    expect(workOnce(contents).get('l49999')).toEqual({ known: true, value: 50_000 });
  });

  test('400 random rules that read one another come to the same by either engine', () => {
    const { apart, sorts } = comparedRules(8);
    expect(apart.slice(0, 5)).toEqual([]);
    expect([...sorts]).toEqual(expect.arrayContaining(['number', 'boolean', 'missing', 'refused']));
  });

  test('written in any order, lines come to the same', () => {
    const lines = ['2', 'l0 + 1', 'if(l1 > 2, l0, 1 / 0)', 'l2 * l1'].map(
      (text, at) => [`l${at}`, ruled(text)] as const,
    );
    fc.assert(
      fc.property(fc.shuffledSubarray(lines, { minLength: 4 }), (order) => {
        expect(workOnce(new Map(order)).get('l3')).toEqual({ known: true, value: 6 });
      }),
    );
  });
});
