import { derive } from '#shared-calc/derive/derived.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { runAct } from '#shared-calc/acts/act.ts';
import { allActs } from '#shared-calc/acts/all-acts.ts';
import { ChangeSchema } from '#shared-calc/records/change-schema.ts';
import { applyChange, emptyChange, invertChange } from '#shared-calc/records/change.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import { allKinds, type Records } from '#shared-calc/records/records.ts';
import { findReferenceFault } from '#shared-calc/records/references.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { anyInput } from './any-input.ts';

const book = libraryJob();
const derived = derive(book, DEMO_DAY);

/** Ids in the book, and texts that its cells accept. */
const words: readonly string[] = [
  ...allKinds.flatMap((kind) => [...book[kind].keys()].slice(0, 6)),
  ...[...book.line.values()].slice(0, 12).map(({ name }) => name),
  ...jobStates,
  'T07',
  '12 mm',
  'yes',
  '',
  'drain_gap * 2',
];

describe('every act', () => {
  test('has a name of its own, a sentence, and an input that programs can read', () => {
    expect(new Set(allActs.map(({ name }) => name)).size).toBe(allActs.length);
    for (const { name, says, input } of allActs) {
      expect(name).toMatch(/^[a-z][A-Za-z]*$/);
      expect(says).toMatch(/^[A-Z].*\.$/);
      expect(Object.keys(z.toJSONSchema(input, { io: 'input' }))).not.toEqual([]);
    }
  });

  test.each(allActs.map((act) => [act.name, act] as const))(
    '%s never throws; what it changes is taken back whole, and names nothing that is not in the book',
    (_, act) => {
      fc.assert(
        fc.property(anyInput(act.input, words), (input) => {
          const done = runAct(act, derived, input);
          const change = done.ok ? done.value : emptyChange(sayActFault(done.fault));
          const next = applyChange(book, change);
          expect(change.label).not.toBe('');
          expect(ChangeSchema.safeParse(change).success).toBe(true);
          expect(findReferenceFault(next, change)).toBeUndefined();
          expect(plain(applyChange(next, invertChange(change)))).toEqual(plain(book));
        }),
        { numRuns: 60 },
      );
    },
  );

  test('an input that does not fit is refused with the field and what it wants', () => {
    const newJob = allActs.find(({ name }) => name === 'newJob');
    const said = (input: unknown) => {
      const done = newJob && runAct(newJob, derived, input);
      return done?.ok === false ? sayActFault(done.fault) : '';
    };
    expect(said({})).toBe('Title is missing; it wants a text.');
    expect(said({ title: 'Hall', sizes: [{ tank: 'T03', count: 1.5 }] })).toBe(
      'Sizes.0.count is 1.5; it wants a whole number.',
    );
    expect(said({ title: 'Hall', by: 'them' })).toBe('By is "them"; it wants one of client, us.');
    expect(said({ title: 'Hall', handover: 'soon' })).toBe('Handover is "soon"; it wants a day, such as 2026-11-25.');
    expect(said({ title: 'Hall', colour: 'red' })).toBe('The input has no field called colour.');
    expect(said('Hall')).toBe('The input is "Hall"; it wants an object with its fields.');
  });
});

function plain(records: Records): unknown {
  return Object.fromEntries(allKinds.map((kind) => [kind, new Map<string, unknown>(records[kind])]));
}
