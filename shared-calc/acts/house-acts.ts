import { recipesOf } from '#shared-calc/jobs/job-recipes.ts';
import { z } from 'zod';
import {
  takesChanges,
  isSoldState,
  answerOf,
  changesOf,
  lineOfChange,
  withChange,
} from '#shared-calc/jobs/house-changes.ts';
import { withAnswer } from '#shared-calc/derive/house-offers.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { houseAnswers } from '#shared-calc/fields/house-change.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import { isSold, type SoldHouse } from '#shared-calc/jobs/sold-house.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { lineById, linesOf } from '#shared-calc/recipe/lines-of.ts';
import { withLineFor, withLines } from '#shared-calc/recipe/write-lines.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { LineEdit } from '#shared-calc/jobs/line-edits.ts';
import { applyChange, emptyChange, squashChanges, updated, type Change } from '#shared-calc/records/change.ts';
import type { HouseChange, Line, Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { editsIn, numbered, type LoggedEdit } from './house-log.ts';
import { Day } from './inputs.ts';
import { breaksOf, needsOf } from './line-breaks.ts';
import { lineFault } from './line-fault.ts';
import { linesWritten } from './line-changes.ts';
import { localChange } from './local-change.ts';
import { writeLine } from './recipe-acts.ts';
import { recordChanged, recordRemoved, withFields } from './record-changes.ts';

const Change = z.string().describe('The number of the change: HC-0001.');
const Note = z.string().max(10_000).default('');

const Propose = z.strictObject({
  recipe: z.string(),
  lines: z
    .array(z.strictObject({ line: z.string().describe('The name of a line.'), text: z.string() }))
    .min(1)
    .describe('As they are typed in the recipe.'),
  note: Note,
  fromJob: z.string().optional().describe('The job that it was found at.'),
});

export const proposeHouse = act<z.infer<typeof Propose>>({
  name: 'proposeHouse',
  says: 'Proposes figures or rules for lines of a house recipe, without writing them.',
  input: Propose,
  run: (derived, { recipe, lines, note, fromJob }) => {
    const { records } = derived;
    const written = textsWritten(derived, recipe, lines);
    if (!written.ok) return written;
    const job = fromJob === undefined ? undefined : findJob(records, fromJob);
    if (job && !job.ok) return job;
    return proposed(derived, recipe, written.value, { note, ...(fromJob !== undefined && { fromJob }) });
  },
});

/** The change that writes several lines of a recipe. */
function textsWritten(
  derived: Derived,
  recipe: string,
  lines: z.infer<typeof Propose>['lines'],
): Result<Change, ActFault> {
  const found = findRecord(derived.records, 'recipe', recipe);
  if (!found.ok) return found;
  let now = derived;
  const steps: Change[] = [];
  for (const { line: name, text } of lines) {
    const known = linesOf(now.records, recipe);
    const line = known.find((each) => each.name === name);
    const near = nearestName(
      name,
      known.map((each) => each.name),
    );
    if (!line) return failed({ kind: 'no-line', line: name, ...(near !== undefined && { near }) });
    const step = writeLine.run(now, { line: line.id, text });
    if (!step.ok) return step;
    steps.push(step.value);
    now = now.update(applyChange(now.records, step.value));
  }
  return ok(squashChanges('', steps));
}

export interface Said {
  readonly note: string;
  readonly fromJob?: string;
}

/** An edit kept as proposals, one a line. */
export function proposed(
  { records, today: on }: Derived,
  recipe: string,
  change: Change,
  said: Said,
): Result<Change, ActFault> {
  const edits = editsIn(records, change).filter(({ how }) => how === undefined);
  if (edits.length === 0) return failed({ kind: 'no-house-change', recipe });
  return ok({
    ...emptyChange(`${recipe}: ${editWords(edits)} proposed`.slice(0, 300)),
    added: numbered(
      records,
      edits.map((edit) => ({ ...edit, on, ...said })),
    ),
  });
}

function editWords(edits: readonly LoggedEdit[]): string {
  return edits.map((edit) => wordsOf(lineOfChange(edit))).join(', ');
}

function wordsOf(line: Line | undefined): string {
  return line ? inSentence(lineLabel(line)) : 'a line';
}

const Force = z.strictObject({ change: Change, on: Day.optional() });

export const forceHouse = act<z.infer<typeof Force>>({
  name: 'forceHouse',
  says: 'Puts a proposed change in force: the house recipe is written, sold jobs are offered it.',
  input: Force,
  run: (derived, { change: id, on = derived.today }) => {
    const change = findProposal(derived, id);
    return change.ok ? forced(derived.records, change.value, on) : change;
  },
});

function findProposal({ records, display }: Derived, id: string): Result<HouseChange, ActFault> {
  const change = findRecord(records, 'houseChange', id.toUpperCase());
  if (!change.ok || change.value.inForceOn === undefined) return change;
  return failed({ kind: 'in-force-already', change: change.value.id, on: change.value.inForceOn, display });
}

/** What the proposal changes of its line; what else became of the line meanwhile stays. */
function forced(records: Records, change: HouseChange, inForceOn: string): Result<Change, ActFault> {
  const before = lineById(records, lineOfChange(change)?.id ?? '');
  if (change.before && !before) return failed({ kind: 'line-gone', change: change.id, line: change.before.name });
  const after = asWanted(change, before);
  const fault = after ? lineFault(records, after) : removalFault(records, before);
  if (fault) return failed(fault);
  const { before: _, after: __, ...rest } = change;
  const to: HouseChange = { ...rest, ...(before && { before }), ...(after && { after }), inForceOn };
  const label = `${change.id} in force: ${wordsOf(after ?? before)}`;
  return ok(
    squashChanges(label, [
      lineWritten(records, label, { before, after, for: change.for }),
      { ...emptyChange(''), updated: [updated('houseChange', change, to)] },
      followingAgain(records, change),
    ]),
  );
}

function asWanted({ before, after }: HouseChange, now: Line | undefined): Line | undefined {
  return after && before && now ? withFields(now, changedFields(before, after)) : after;
}

function changedFields(was: Line, wanted: Line): Parameters<typeof withFields<Line>>[1] {
  const [from, to] = [was, wanted].map((line) => new Map<string, unknown>(Object.entries(line)));
  const keys = [...new Set([...(from?.keys() ?? []), ...(to?.keys() ?? [])])];
  const changed = keys.filter((key) => !sameData(from?.get(key), to?.get(key)));
  return Object.fromEntries(changed.map((key) => [key, to?.get(key) ?? null]));
}

function removalFault(records: Records, line: Line | undefined): ActFault | undefined {
  const by = line ? needsOf(records, line) : [];
  return line && by.length > 0 ? { kind: 'needed', record: { kind: 'line', id: line.id }, by } : undefined;
}

type Wanted = { readonly [K in 'before' | 'after' | 'for']: LineEdit[K] | undefined };

function lineWritten(records: Records, label: string, { before, after, for: tanks }: Wanted): Change {
  if (after && tanks) return diffRecords(label, records, withLineFor(records, after, tanks));
  if (after) return linesWritten(records, label, [after]);
  if (!before) return emptyChange(label);
  return diffRecords(label, records, withLines(records, before.recipe, { gone: [before.id] }));
}

/** The cells of the job that it was found at follow the house again; a sold job keeps its own. */
function followingAgain(records: Records, { fromJob, after }: HouseChange): Change {
  if (fromJob === undefined || !after || isSold(records, fromJob)) return emptyChange('');
  const puts = [...records.localValue.values()]
    .filter((value) => value.job === fromJob && value.line === after.name && value.text === after.text)
    .map(({ size, line }) => ({ size, line, text: undefined }));
  return localChange(records, fromJob, puts, '');
}

const Drop = z.strictObject({ change: Change });

export const dropHouse = act<z.infer<typeof Drop>>({
  name: 'dropHouse',
  says: 'Takes a proposed change of a house away.',
  input: Drop,
  run: (derived, { change: id }) => {
    const change = findProposal(derived, id);
    return change.ok ? ok(recordRemoved(`${change.value.id} dropped`, 'houseChange', change.value)) : change;
  },
});

const Answer = z.strictObject({
  change: Change,
  job: z.string(),
  answer: z.enum(houseAnswers),
  who: z.string().default('R-builder').describe('Who decides it: a rate of the rate book.'),
});

export const answerHouse = act<z.infer<typeof Answer>>({
  name: 'answerHouse',
  says: 'Takes a change of the house into a sold job, or leaves it; the job is built, and quoted again, accordingly.',
  input: Answer,
  run: (derived, { change: id, job, answer, who }) => {
    const { records, today: on } = derived;
    const change = findRecord(records, 'houseChange', id.toUpperCase());
    if (!change.ok) return change;
    const found = findJob(records, job);
    if (!found.ok) return found;
    const rate = findRecord(records, 'rate', who);
    if (!rate.ok) return rate;
    const fault = answerFault(derived, change.value, { job, answer });
    if (fault) return failed(fault);
    const to = withAnswer(change.value, { job, answer, on, by: who });
    const says = answer === 'take' ? 'takes' : 'leaves';
    return ok(recordChanged(`${job} ${says} ${change.value.id}`, 'houseChange', { from: change.value, to }));
  },
});

type Answered = Pick<z.infer<typeof Answer>, 'job' | 'answer'>;

function answerFault(derived: Derived, change: HouseChange, { job: id, answer }: Answered): ActFault | undefined {
  const on = { change: change.id, job: id };
  const before = answerOf(change, id);
  if (before)
    return { kind: 'answered-already', ...on, answer: before.answer, on: before.on, display: derived.display };
  if (change.inForceOn === undefined) return { kind: 'only-proposed', change: change.id };
  const worked = derived.job(id);
  if (!worked || !recipesOf(derived.records, worked.job).has(change.recipe))
    return { kind: 'not-offered', ...on, why: 'other recipe' };
  const { state } = worked.job;
  if (isSoldState(state) && !takesChanges(worked.job)) return { kind: 'too-late-to-take', ...on, state };
  return offerFault(worked.sold, on, change) ?? (answer === 'take' ? takeFault(worked.sold, on, change) : undefined);
}

type On = { readonly change: string; readonly job: string };

function offerFault(sold: SoldHouse | undefined, on: On, change: HouseChange): ActFault | undefined {
  if (!sold) return { kind: 'not-offered', ...on, why: 'follows' };
  return sold.since.includes(change) ? undefined : { kind: 'not-offered', ...on, why: 'in quote' };
}

function takeFault(sold: SoldHouse | undefined, on: On, change: HouseChange): ActFault | undefined {
  const lines = sold?.linesOf(change.recipe) ?? [];
  const [broken] = breaksOf(lines, withChange(lines, change));
  return broken && { kind: 'cannot-take', ...on, label: broken.label };
}

/** The log of a recipe, or of all. */
export function houseLog(records: Records, recipe?: string): readonly HouseChange[] {
  const recipes = recipe === undefined ? [...records.recipe.keys()] : [recipe];
  return recipes.flatMap((each) => changesOf(records, each));
}
