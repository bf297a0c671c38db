import { z } from 'zod';
import { runAct } from '#shared-calc/acts/act.ts';
import { allActs } from '#shared-calc/acts/all-acts.ts';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { previousOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { storyActs, type StoryFault } from './story-acts.ts';

/** One act of a story, so many days before the day it is told (0 or below). */
export const StoryStep = z.strictObject({ day: z.int().max(0), act: z.string(), input: z.looseObject({}) });
export type StoryStep = z.infer<typeof StoryStep>;

export interface RefusedStep {
  readonly step: StoryStep;
  readonly fault: StoryFault;
}

export interface Told {
  readonly records: Records;
  /** Steps that the book of their day refused. They are left out, so that a book is made on every day. */
  readonly refused: readonly RefusedStep[];
}

/**
 * Walks a story day by day: each act is done on the book as it finds it, on its own day, or on the open day before. In
 * an input, `DAY+12` is the open day at or before the twelfth from `today`.
 */
export function tellStory(begin: Records, steps: readonly StoryStep[], today: Day): Told {
  let derived = derive(begin, today);
  const { calendar } = derived;
  const refused: RefusedStep[] = [];
  for (const step of steps.toSorted((one, other) => one.day - other.day)) {
    derived = derived.update(derived.records, openDay(today, step.day, calendar));
    const change = doStep(derived, step.act, datedInput(step.input, today, calendar));
    if (change.ok) derived = derived.update(applyChange(derived.records, change.value));
    else refused.push({ step, fault: change.fault });
  }
  return { records: derived.records, refused };
}

function doStep(derived: Derived, name: string, input: unknown): Result<Change, StoryFault> {
  const ofStory = storyActs.get(name);
  if (ofStory) return ofStory(derived, input);
  const act = allActs.find((each) => each.name === name);
  return act ? runAct(act, derived, input) : failed({ kind: 'no-act' });
}

function openDay(today: Day, days: number, calendar: WorkCalendar): Day {
  return previousOpen(addDays(today, days), calendar);
}

function datedInput(input: object, today: Day, calendar: WorkCalendar): unknown {
  const text = JSON.stringify(input);
  return JSON.parse(
    text.replaceAll(/"DAY([+-]\d+)"/g, (_, days: string) => `"${openDay(today, Number(days), calendar)}"`),
  );
}
