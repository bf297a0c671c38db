import { describe, expect, test } from 'vitest';
import { changedBoxes } from '#renderer/places/quotes/changed-boxes.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { after, issued, libraryJob, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('changedBoxes', () => {
  test('what was written otherwise is said with who wrote it', () => {
    const first = issued(libraryJob(), 'A');
    const client = written(first.records, 'client', { litter: '20 mm' });
    const ours = written(client, 'us', { 'T05.shelf_rating': '80 kg' });
    const resized = after(ours, setSizes(ours, 'J02', [{ tank: 'T05', count: 2 }]));
    expect(changedBoxes(first.body, issued(resized, 'B').body)).toEqual([
      { what: 'Sizes', from: 'T05', to: 'T05 × 2', by: 'client' },
      { what: 'Litter depth', from: 'as the house', to: '20 mm', by: 'client' },
      { what: 'Shelf rating of T05', from: 'as the house', to: '80 kg', by: 'us' },
    ]);
  });

  test('two issues of the same have nothing to tell', () => {
    const first = issued(libraryJob(), 'A');
    expect(changedBoxes(first.body, issued(first.records, 'B').body)).toEqual([]);
  });
});
