import { globSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workRule } from '#shared-calc/bench/work-rule.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { findUnit, fromBase } from '#shared-calc/quantity/unit.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import { functionsOfGroup, tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';

const folder = path.join(import.meta.dirname, '../../../shared-calc/trade');
const inRules = tradeFunctions.filter((each) => each.inRules);
const overLists = tradeFunctions.filter((each) => !each.inRules);
const examples = inRules.flatMap((each) => each.examples);

describe('functionsOfGroup', () => {
  test('every function written in the folder of a group is in the list of that group, and says that group', async () => {
    const written = await Promise.all(globSync('*/*.ts', { cwd: folder }).map(functionsIn));
    const listed = Object.entries(functionsOfGroup).flatMap(([group, list]) =>
      list.map((each) => [each.name, group, each.group].join(': ')),
    );
    expect(listed.toSorted()).toEqual(written.flat().toSorted());
  });
});

describe('tradeFunctions', () => {
  test('no two are called the same', () => {
    const names = tradeFunctions.map((each) => each.name.toLowerCase());
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  test('every one has its words, its source, two examples and units that are known', () => {
    expect(tradeFunctions.flatMap(missingFrom)).toEqual([]);
  });

  test('what a function lacks is said', () => {
    const [first] = inRules;
    if (!first) throw new Error('There is no function.');
    const bare = {
      ...first,
      name: 'reed_count',
      help: 'Reeds',
      source: ' ',
      examples: [],
      gives: 'reed',
    };
    expect(missingFrom(bare)).toEqual([
      'reed_count: source is empty',
      'reed_count: help must end as a sentence',
      'reed_count: needs two examples or more, has 0',
      'reed_count: "reed" is not a unit',
    ]);
  });

  test.each(examples)('$rule is $gives, to the digits printed', ({ rule, gives }) => {
    const printed = readFigure(gives, { unit: 'number' });
    const worked = workRule(rule);
    if (!printed.ok || !worked.ok) throw new Error(JSON.stringify({ printed, worked }));
    const { value, kind } = worked.value;
    expect(kind.is === 'figure' && sameDimension(kind.dimension, printed.value.unit.dimension)).toBe(true);
    const [digits = ''] = gives.split(' ');
    const half = 0.5 / 10 ** (digits.split('.')[1] ?? '').length;
    expect(
      Math.abs(fromBase(Number(value), printed.value.unit) - Number(digits.replaceAll(',', ''))),
    ).toBeLessThanOrEqual(half * 1.0001);
  });

  test.each(inRules)('$name answers in the unit it promises, where it promises one', ({ gives, examples: own }) => {
    if (typeof gives !== 'string') return;
    const promised = findUnit(gives);
    const worked = own.map((each) => workRule(each.rule));
    const kinds = worked.flatMap((each) => (each.ok ? [each.value.kind] : []));
    expect(kinds).toHaveLength(own.length);
    expect(
      kinds.filter((kind) => kind.is !== 'figure' || !promised || !sameDimension(kind.dimension, promised.dimension)),
    ).toEqual([]);
  });

  test.each(inRules.map((made) => [made.name, made] as const))(
    '%s answers any figures with a figure or a sentence, the same each time, and leaves them as they were',
    (_, made) => {
      fc.assert(
        fc.property(fc.tuple(...made.args.map(anyValue)), (values) => {
          const given = Object.freeze([...values]);
          const answer = made.compute(given);
          expect(typeof answer !== 'number' || Number.isFinite(answer)).toBe(true);
          for (const says of saysAll(made, given)) expect(says ?? 'None.').toMatch(/^[A-Z0-9].*[.?]$/);
          expect(made.compute(given)).toEqual(answer);
        }),
      );
    },
  );

  test('functions over lists and dates have no name in rules, and say so', () => {
    expect(overLists.map((each) => each.name).toSorted()).toEqual([
      'COVER_PANE',
      'CULTURES_TO_KEEP',
      'DEPOSIT_DUE',
      'KILL_TOTAL',
      'LANDED_COST',
      'LEAF_TREAT_TIME',
      'MESH_CUT',
      'MIX_SPLIT',
      'ORDER_BY',
      'PACK_MIX',
      'READY_DATE',
      'SERVICE_DATES',
      'TASK_MINUTES',
      'TAX_SPLIT',
      'WORKDAY_SHIFT',
    ]);
    expect(overLists.map((each) => each.compute([]))).toEqual(
      overLists.map((each) => ({ refused: `${each.title} works over lists or dates and has no name in rules.` })),
    );
  });
});

/** The entries that a file exports: name, group of the folder, group of the entry. */
async function functionsIn(file: string): Promise<readonly string[]> {
  const group = path.dirname(file).replaceAll('-', ' ');
  const exported: unknown = await import(pathToFileURL(path.join(folder, file)).href);
  return Object.values(exported ?? {})
    .filter(isEntry)
    .map((each) => [each.name, group, each.group].join(': '));
}

function isEntry(exported: unknown): exported is TradeFunction {
  return typeof exported === 'object' && exported !== null && 'inRules' in exported;
}

/** What the entry of a function still lacks for the Function book, in words. */
function missingFrom(entry: TradeFunction): readonly string[] {
  const { help, examples: own, args } = entry;
  const words = (['title', 'sum', 'help', 'source'] as const).filter((word) => entry[word].trim() === '');
  const unsaid = args.filter((each) => (each.says ?? '').trim() === '');
  return [
    ...words.map((word) => `${word} is empty`),
    ...unsaid.map((each) => `argument ${each.name} does not say what it is`),
    ...(/[.?!]$/.test(help) ? [] : ['help must end as a sentence']),
    ...(own.length < 2 ? [`needs two examples or more, has ${own.length}`] : []),
    ...(entry.inRules ? unknownUnits(entry).map((unit) => `"${unit}" is not a unit`) : []),
    ...(!entry.inRules || /^[a-z][a-z0-9_]*$/.test(entry.name) ? [] : ['rules cannot use this name']),
  ].map((lack) => `${entry.name}: ${lack}`);
}

function unknownUnits({ gives, args }: TradeFunction): readonly string[] {
  return [gives, ...args.map((each) => each.takes)]
    .filter((unit) => typeof unit === 'string')
    .filter((unit) => unit !== 'any' && !findUnit(unit));
}

function anyValue({ takes }: Argument): fc.Arbitrary<number | string> {
  const figure = fc.oneof(
    fc.constantFrom(-1, 0, 1, 3),
    fc.integer({ min: -1e9, max: 1e9 }).map((millionths) => millionths / 1e6),
  );
  return typeof takes === 'string' ? figure : fc.constantFrom(...takes);
}

function saysAll(made: TradeFunction, values: readonly (number | string)[]): readonly (string | undefined)[] {
  const answer = made.compute(values);
  return typeof answer === 'number' ? [made.warn?.(values, answer)] : [answer.refused];
}
