import { renameLine } from '#shared-calc/acts/recipe-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';

/** The suffix of every new name; it is removed before names are compared. */
const RENAMED = '_zz';

/** The demo workshop with one more job, of the given recipe. */
export function withJobOf(
  recipe: string,
  tanks: readonly string[],
): { readonly records: Records; readonly job: string } {
  const records = demoRecords();
  const made = newJob(records, {
    title: 'Reading room',
    recipe,
    sizes: tanks.map((tank) => ({ tank, count: 1 })),
    writings: [],
    by: 'client',
    on: DEMO_DAY,
  });
  if (!made.ok) throw new Error(JSON.stringify(made.fault));
  return { records: applyChange(records, made.value.change), job: made.value.job };
}

/** The records with a line renamed, as the recipe view does it. */
export function renamed(records: Records, line: Line): Records {
  const { name } = records.line.get(line.id) ?? line;
  const change = renameLine.run(derive(records, DEMO_DAY), { line: line.id, name: `${name}${RENAMED}` });
  if (!change.ok) throw new Error(`${name}: ${sayActFault(change.fault)}`);
  return applyChange(records, change.value);
}

/** Plain data with the old names restored, in names, rules, braces and labels. */
export function asBefore(views: unknown): unknown {
  return JSON.parse(JSON.stringify(views).replaceAll(RENAMED, '').replaceAll(RENAMED.replace('_', ' '), ''));
}
