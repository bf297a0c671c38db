import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { rememberOpenJob } from '#renderer/store/remembered-job.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

const info = signal({
  opening: '1',
  name: 'Workshop.loamwright',
  path: '/books/Workshop.loamwright',
  revision: 1,
  savedAt: '2027-03-10T09:00:00.000Z',
  notices: [],
  today: '2027-03-10',
});

function storageWith(texts: readonly (readonly [string, string])[]) {
  const kept = new Map(texts);
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
}

function open(storage: ReturnType<typeof storageWith>) {
  const job = signal<string | undefined>('J01');
  const stop = rememberOpenJob(
    { job, openJob: (id) => (job.value = id), records: signal(libraryJob()), info },
    storage,
  );
  return { job, stop };
}

const key = 'loamwright job of /books/Workshop.loamwright';

describe('rememberOpenJob', () => {
  test('the job that lay open the last time lies open again', () => {
    expect(open(storageWith([[key, 'J02']])).job.value).toBe('J02');
  });

  test('a job that is no longer in the book, or lay open in another book, does not', () => {
    expect([
      open(storageWith([[key, 'J99']])).job.value,
      open(storageWith([['loamwright job of /other', 'J02']])).job.value,
    ]).toEqual(['J01', 'J01']);
  });

  test('opening another job keeps that one', () => {
    const storage = storageWith([]);
    const { job } = open(storage);
    job.value = 'J02';
    expect([...storage.kept]).toEqual([[key, 'J02']]);
  });
});
