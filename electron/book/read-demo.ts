import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';
import { added, type Added } from '#shared-calc/records/change.ts';
import { recipeLines } from '#shared-calc/records/recipe-lines.ts';
import type { RecordKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { parseJson } from './parse-json.ts';
import { parseRecord } from '#shared-calc/records/references.ts';
import { codeOf } from './storage-fault.ts';

/** Why the demo workshop cannot be read: a file is missing or has invalid content. */
export interface DemoFault {
  readonly kind: 'demo-unreadable';
  readonly file: string;
  readonly says: string;
}

/** In the source tree; a packaged program passes its own folder. */
export const ownFolder = fileURLToPath(new URL('../../fixtures/demo/', import.meta.url));

const files: readonly (readonly [string, RecordKind])[] = [
  ['workshop.json', 'workshop'],
  ['suppliers.json', 'supplier'],
  ['tanks.json', 'tank'],
  ['materials.json', 'material'],
  ['packs.json', 'pack'],
  ['prices.json', 'packPrice'],
  ['plants.json', 'plant'],
  ['cultures.json', 'cultureKind'],
  ['animals.json', 'animalKind'],
  ['rates.json', 'rate'],
  ['tax-classes.json', 'taxClass'],
  ['margins.json', 'margin'],
  ['closed-days.json', 'closedDay'],
  ['jobs.json', 'job'],
  ['sizes.json', 'size'],
  ['local-values.json', 'localValue'],
  ['stock.json', 'move'],
];

const Objects = z.union([z.array(z.looseObject({})), z.looseObject({}).transform((one) => [one])]);
const RecipeFile = z.strictObject({ recipe: z.looseObject({}), lines: z.array(z.looseObject({})) });

type Read = Result<readonly Added[], DemoFault>;

/** Every record of the demo workshop; prices are valid from the first of the month of `today`. */
export function readDemo(today: string, folder: string = ownFolder): Read {
  const recipes = listFiles(folder, 'recipes');
  if (!recipes.ok) return recipes;
  const parts = [
    ...files.map(([file, kind]) => readFile(folder, file, (data) => readKind(kind, Objects.parse(data), today))),
    ...recipes.value.map((file) => readFile(folder, file, (data) => readRecipe(data, today))),
  ];
  const fault = parts.find((part) => !part.ok);
  return fault ?? ok(parts.flatMap((part) => (part.ok ? part.value : [])));
}

/** The JSON files of a part of the demo, in the order of their names. */
export function listFiles(folder: string, part: string): Result<readonly string[], DemoFault> {
  try {
    const names = readdirSync(join(folder, part)).filter((name) => name.endsWith('.json'));
    return ok(names.sort().map((name) => join(part, name)));
  } catch (error) {
    return failed({ kind: 'demo-unreadable', file: join(folder, part), says: codeOf(error) });
  }
}

export function readFile<T>(
  folder: string,
  file: string,
  read: (data: unknown) => Result<T, string>,
): Result<T, DemoFault> {
  const path = join(folder, file);
  try {
    const records = read(parseJson(readFileSync(path, 'utf8')));
    return records.ok ? records : failed({ kind: 'demo-unreadable', file: path, says: records.fault });
  } catch (error) {
    const says = error instanceof z.ZodError ? 'not a list of records' : codeOf(error);
    return failed({ kind: 'demo-unreadable', file: path, says });
  }
}

function readRecipe(data: unknown, today: string): Result<readonly Added[], string> {
  const { recipe, lines } = RecipeFile.parse(data);
  const one = readKind('recipe', [recipe], today);
  const its = readKind('line', recipeLines(String(recipe['id']), lines), today);
  if (!one.ok || !its.ok) return one.ok ? its : one;
  return ok([...one.value, ...its.value]);
}

function readKind(kind: RecordKind, list: readonly object[], today: string): Result<readonly Added[], string> {
  const records: Added[] = [];
  for (const [index, each] of list.entries()) {
    const record = parseRecord(kind, withMonthStart(each, today));
    if (!record.ok)
      return failed(`record ${index + 1}: ${record.fault.map(({ field, says }) => `${field} ${says}`).join(', ')}`);
    records.push(added(kind, record.value));
  }
  return ok(records);
}

function withMonthStart(record: object, today: string): object {
  const monthStart = `${today.slice(0, 8)}01`;
  return Object.fromEntries(
    Object.entries(record).map(([field, value]) => [field, value === 'MONTH-START' ? monthStart : value]),
  );
}
