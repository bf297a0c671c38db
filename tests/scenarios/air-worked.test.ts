import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

/*
 * The figures of fixtures/worked/air.json were worked by an independent program in another language from the recipe's
 * text alone: the likely one, and the least and the most over its guesses, to the digits written; a check by its state
 * and by the guesses that spoil it.
 */
const file = new URL('../../fixtures/worked/air.json', import.meta.url);
const Worked = z.strictObject({
  why: z.string(),
  size: z.string(),
  set: z.array(z.string()),
  figures: z.record(z.string(), z.array(z.string())),
  checks: z.record(z.string(), z.array(z.string())),
});
const worked = z.array(Worked).parse(JSON.parse(readFileSync(file, 'utf8')));

const Figure = z.object({ value: z.unknown(), from: z.number().optional(), to: z.number().optional() });
const BenchJson = z.object({
  columns: z.tuple([
    z.object({
      lines: z.record(z.string(), Figure),
      checks: z.array(z.object({ line: z.string().nullable(), state: z.string(), badIn: z.array(z.string()) })),
    }),
  ]),
});

describe('air, water, weight and glass worked elsewhere', () => {
  const { book } = useDemoBook();

  test.each(worked)('$size: $why', async ({ size, set, figures, checks }) => {
    const sets = set.flatMap((each) => ['--set', each]);
    const { columns } = BenchJson.parse(await lwJson('bench', '--sizes', size, ...sets, '--book', book()));
    const [column] = columns;
    const told = Object.entries(figures).map(([name, wanted]) => {
      const { value, from, to } = column.lines[name] ?? {};
      return [name, wanted.map((digits, at) => asWritten([value, from, to][at], digits))];
    });
    expect(Object.fromEntries(told)).toEqual(figures);
    const states = column.checks.map(({ line, state, badIn }) => [line, [state, ...badIn]]);
    expect(Object.fromEntries(states)).toMatchObject(checks);
  });
});

/** To as many decimals, or the figure itself where it differs by more than half of the last one. */
function asWritten(figure: unknown, digits: string): string {
  const decimals = digits.split('.')[1]?.length ?? 0;
  const isSame = Math.abs(Number(figure) - Number(digits)) <= 0.5001 * 10 ** -decimals;
  return isSame || Math.abs(Number(figure) / Number(digits) - 1) < 1e-4 ? digits : String(figure);
}
