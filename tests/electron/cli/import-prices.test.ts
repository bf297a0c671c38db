import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { demoRecords } from '#tests/demo-bench.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const { book, folder } = useDemoBook();

function list(name: string, ...rows: readonly string[]): string {
  const file = path.join(folder(), name);
  writeFileSync(file, ['material,pack,unit,price,from', ...rows, ''].join('\r\n'));
  return file;
}

async function lastLine(...argv: readonly string[]): Promise<string | undefined> {
  const { code, out, err } = await lw('book', 'import-prices', ...argv, '--book', book());
  if (code !== 0) throw new Error(err);
  return out.trimEnd().split('\n').at(-1);
}

describe('book import-prices', () => {
  test('tried, taken in, and then there is nothing left to do', async () => {
    const file = list('spring.csv', 'M01,10,L,10.20,2090-04-01', 'M01,45,L,33,2090-04-01');
    expect(await lastLine(file, '--try')).toBe('Tried only: 2 prices could be taken in.');
    expect(await lastLine(file)).toBe('2 prices taken in.');
    expect(await lastLine(file)).toBe('Nothing to do: the book has all of these prices already.');
    expect(await lwJson('book', 'check', '--book', book())).toMatchObject({
      sound: true,
      revision: 2,
      counts: { packPrice: demoRecords().packPrice.size + 2 },
    });
  });

  test('the new price holds from its day on, and not before', async () => {
    const clay = async (on: string) =>
      await lwJson(
        'needs',
        '--sizes',
        'T07',
        '--set',
        'soil_rise=0 mm',
        '--materials',
        'M01',
        '--on',
        on,
        '--book',
        book(),
      );
    expect(await clay('2090-03-31')).toMatchObject({ needs: [{ packsCost: '19.60' }] });
    expect(await clay('2090-04-01')).toMatchObject({ needs: [{ packsCost: '20.40' }] });
  });
});
