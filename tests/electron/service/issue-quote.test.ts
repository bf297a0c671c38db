import { describe, expect, test } from 'vitest';

import { hashBody } from '#electron/book/issued.ts';

import { addedJob, ask, jobOf, recordsOf, refused, serviceAtHand, standing } from './service-at-hand.ts';

describe('issueQuote', () => {
  test('a quote is issued with its number, and the page is told what that changed', () => {
    const at = serviceAtHand();
    const { info, change } = ask(at, 'quote.issue', { ...standing(at), job: 'J01' });
    const [quote] = [...recordsOf(at).issuedQuote.values()];

    expect(quote && [quote.id, quote.job, quote.number, quote.revision, quote.issuedOn]).toEqual([
      'Q-0001A',
      'J01',
      'Q-0001',
      'A',
      '2027-03-10',
    ]);
    expect(quote?.sha256).toBe(hashBody(quote?.body ?? ''));
    expect(change?.added).toEqual([{ kind: 'issuedQuote', record: quote }]);
    expect(jobOf(at).state).toBe('quoted');
    expect(info.undo).toBeUndefined();
  });

  test('the next one for the same job is its next revision', () => {
    const at = serviceAtHand();
    ask(at, 'quote.issue', { ...standing(at), job: 'J01' });
    ask(at, 'quote.issue', { ...standing(at), job: 'J01' });

    expect([...recordsOf(at).issuedQuote.keys()]).toEqual(['Q-0001A', 'Q-0001B']);
  });

  test('an issue is not undone', () => {
    const at = serviceAtHand();
    ask(at, 'quote.issue', { ...standing(at), job: 'J01' });

    expect(refused(at, 'book.undo', standing(at))?.says).toMatch(/^This is not undone: quote Q-0001 A of J01 issued/);
  });

  test('a page that shows an older state issues nothing', () => {
    const at = serviceAtHand();
    const seen = standing(at);
    ask(at, 'book.apply', { ...seen, change: addedJob(at, 'J90') });

    expect(refused(at, 'quote.issue', { ...seen, job: 'J01' })?.readAgain).toBe(true);
    expect(recordsOf(at).issuedQuote.size).toBe(0);
  });

  test('a job without a size has nothing to quote', () => {
    const at = serviceAtHand();
    ask(at, 'book.apply', { ...standing(at), change: addedJob(at, 'J90') });

    expect(refused(at, 'quote.issue', { ...standing(at), job: 'J90' })?.says).toBe(
      'J90 has no size yet, so there is nothing to quote.',
    );
  });

  test('a figure that is missing is told by the words of its line and the name of its size', () => {
    const at = serviceAtHand();
    const from = recordsOf(at).size.get('J01-T07');
    if (!from) throw new Error('the demo job has no T07');
    const label = 'By the stairs';
    const place = { job: 'J01', size: from.id, line: 'litter' };
    const record = { id: 'J01-T07.litter', ...place, text: '', note: '', by: 'us' as const };
    const change = {
      label: 'a size named and a figure taken out',
      added: [{ kind: 'localValue' as const, record }],
      updated: [{ kind: 'size' as const, from, to: { ...from, label } }],
      removed: [],
    };
    ask(at, 'book.apply', { ...standing(at), change });

    expect(refused(at, 'quote.issue', { ...standing(at), job: 'J01' })?.says).toBe(
      'Not known yet: By the stairs, litter depth.',
    );
  });
});
