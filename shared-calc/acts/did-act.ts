import { everyLine } from '#shared-calc/bench/every-line.ts';
import { z } from 'zod';
import { dayFault } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { whoDoes } from '#shared-calc/derive/plan-acts.ts';
import { doneSteps } from '#shared-calc/fields/done.ts';
import { added, emptyChange, type Change } from '#shared-calc/records/change.ts';
import { recordKinds, type Done } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { ActFault } from './act-fault.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';
import { Day } from './inputs.ts';
import { withMoves } from './move-by-facts.ts';
import { doneId } from './reason.ts';

const { shape } = recordKinds.done;

const Did = z.strictObject({
  step: z.string().describe(`A step of the plan (${doneSteps.join(', ')}), a task of the recipe such as L11, or care.`),
  job: z.string().optional(),
  size: shape.size,
  tub: z.string().optional(),
  order: z.string().optional(),
  on: Day.optional().describe('Left out: today.'),
  who: z.string().optional().describe('Whose hour it is: a rate. Left out: whose hour the step is.'),
  name: z.string().max(60).optional().describe('Of the person.'),
  minutes: z.number().min(0).max(100_000).optional(),
  ends: z.boolean().optional().describe('The step is over.'),
  readings: shape.readings,
  note: z.string().max(10_000).optional(),
  anyway: z.string().max(10_000).optional().describe('Why it is so although something stands against its job.'),
});

export const did = act<z.infer<typeof Did>>({
  name: 'did',
  says: 'Writes down what was done, by whom and in how long; a step that is over moves its job on.',
  input: Did,
  run: (derived, { anyway, ...told }) => {
    const entry = readEntry(derived, told);
    if (!entry.ok) return entry;
    const { job, who, ends, on } = entry.value;
    const change = writing(derived, entry.value);
    if (job === undefined || !ends) return ok(change);
    const reason = anyway === undefined || anyway.trim() === '' ? {} : { anyway, who };
    const { records, today } = derived;
    return withMoves(on > today ? derived.update(records, on) : derived, change, { jobs: [job], ...reason });
  },
});

type Told = Omit<z.infer<typeof Did>, 'anyway'>;

function readEntry(derived: Derived, { on = derived.today, ...told }: Told): Result<Omit<Done, 'id'>, ActFault> {
  const fault = dayFault(on) ?? faultOf(derived, told);
  if (fault) return failed(fault);
  const rate = findRecord(derived.records, 'rate', told.who ?? whoDoes(told.step));
  if (!rate.ok) return rate;
  const rateCoins = told.minutes === undefined ? {} : { rateCoins: rate.value.coins };
  return ok({ ...withoutEmpty(told), ...rateCoins, on, who: rate.value.id, against: [] });
}

function faultOf(derived: Derived, told: Omit<Told, 'on'>): ActFault | undefined {
  const { job, tub, order, step } = told;
  if ([job, tub, order].every((each) => each === undefined)) return { kind: 'done-for-nothing' };
  const found = [
    ...(job === undefined ? [] : [findRecord(derived.records, 'job', job)]),
    ...(tub === undefined ? [] : [findRecord(derived.records, 'tub', tub)]),
  ].find((each) => !each.ok);
  if (found && !found.ok) return found.fault;
  const steps = stepsOf(derived, told);
  return steps.includes(step) ? undefined : noStep(step, steps);
}

/** What a client is asked, and the care of tubs and of tanks that are handed over. */
const OTHER_STEPS = ['asked', 'feed', 'care', 'receive', 'pack'];

/** The steps that can be told: of a job, its tasks as well. */
function stepsOf(derived: Derived, { job }: Pick<Told, 'job'>): readonly string[] {
  const worked = job === undefined ? undefined : derived.job(job);
  const lines = worked ? everyLine(worked.bench) : [];
  const tasks = lines.flatMap(({ role, task, name }) => (role === 'work' ? [task ?? name, name] : []));
  return [...doneSteps, ...OTHER_STEPS, ...tasks];
}

function noStep(step: string, steps: readonly string[]): ActFault {
  const near = nearestName(step, steps);
  return { kind: 'no-step', step, steps: doneSteps, ...(near !== undefined && { near }) };
}

function withoutEmpty({ name = '', note = '', ends = false, ...told }: Omit<Told, 'on'>) {
  return { ...told, ends, note: note.trim(), ...(name.trim() !== '' && { name: name.trim() }) };
}

function writing({ records }: Pick<Derived, 'records'>, told: Omit<Done, 'id'>): Change {
  const { job, tub, order, step, ends } = told;
  const label = `${job ?? tub ?? order}: ${step} ${ends ? 'done' : 'worked on'}`;
  return { ...emptyChange(label), added: [added('done', { id: doneId([...records.done.keys()], told), ...told })] };
}
