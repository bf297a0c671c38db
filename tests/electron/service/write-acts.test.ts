import { describe, expect, test } from 'vitest';

import { addedJob, ask, jobOf, recordsOf, refused, retitled, serviceAtHand, standing } from './service-at-hand.ts';

describe('applyChange', () => {
  test('an edit is in the book, named for undo, and told to the pages', () => {
    const at = serviceAtHand();
    const made = standing(at);
    const { info, others } = ask(at, 'book.apply', { ...made, change: retitled(at, 'Quay hall') });

    expect(jobOf(at).title).toBe('Quay hall');
    expect(others).toEqual([]);
    expect([info.revision, info.undo, info.redo]).toEqual([2, 'J01 is Quay hall', undefined]);
    expect(at.news).toEqual([{ is: 'written', opening: made.opening, revision: 2 }]);
  });

  test('an edit that says what stands already writes nothing', () => {
    const at = serviceAtHand();
    const change = retitled(at, jobOf(at).title);

    expect(ask(at, 'book.apply', { ...standing(at), change }).info.revision).toBe(1);
    expect(at.news).toEqual([]);
  });

  test('an edit made for a book that was put away is refused', () => {
    const at = serviceAtHand();
    const made = standing(at);
    const change = retitled(at, 'Quay hall');
    ask(at, 'file.new', { name: 'Other', start: 'plain' });

    expect(refused(at, 'book.apply', { ...made, change })).toEqual({
      says: 'Another book has been opened meanwhile.',
      readAgain: true,
    });
    expect(jobOf(at).title).toBe('Ferry waiting hall');
  });
});

describe('stepBack and stepForward', () => {
  test('undo and redo answer what happened, so that the page can do the same', () => {
    const at = serviceAtHand();
    const change = retitled(at, 'Quay hall');
    const [update] = change.updated;
    ask(at, 'book.apply', { ...standing(at), change });

    const undone = ask(at, 'book.undo', standing(at));
    expect(undone.change?.updated).toEqual([{ kind: 'job', from: update?.to, to: update?.from }]);
    expect([undone.info.undo, undone.info.redo]).toEqual([undefined, 'J01 is Quay hall']);
    expect(jobOf(at).title).toBe('Ferry waiting hall');

    const redone = ask(at, 'book.redo', standing(at));
    expect(redone.change?.updated).toEqual(change.updated);
    expect(jobOf(at).title).toBe('Quay hall');
  });

  test('with nothing to take back, nothing happens', () => {
    const at = serviceAtHand();

    expect(ask(at, 'book.undo', standing(at))).toEqual({ info: ask(at, 'book.info', {}), others: [] });
    expect(ask(at, 'book.redo', standing(at))).toEqual({ info: ask(at, 'book.info', {}), others: [] });
  });

  test('what was done before the program was closed can still be taken back', () => {
    const first = serviceAtHand();
    ask(first, 'book.apply', { ...standing(first), change: retitled(first, 'Quay hall') });
    first.service.close();
    const again = serviceAtHand(first.path);
    ask(again, 'book.undo', standing(again));

    expect(jobOf(again).title).toBe('Ferry waiting hall');
  });
});

describe('two windows on one book', () => {
  test('each is told of the other, and reads only what is new to it', () => {
    const [one, other] = twoWindows();
    const before = standing(other);
    ask(one, 'book.apply', { ...standing(one), change: addedJob(one, 'J90') });
    other.service.look();

    expect(other.news).toEqual([{ is: 'written', opening: before.opening, revision: 2 }]);
    const since = ask(other, 'book.since', { opening: before.opening, revision: before.onRevision });
    expect(since.entries.map(({ revision, change }) => [revision, change.label])).toEqual([[2, 'job J90']]);
    other.service.look();
    expect(other.news.length).toBe(1);
  });

  test('edits of different records both stay, and the answer tells what the other did', () => {
    const [one, other] = twoWindows();
    const seen = standing(other);
    const late = addedJob(other, 'J91');
    ask(one, 'book.apply', { ...standing(one), change: addedJob(one, 'J90') });
    const { info, others } = ask(other, 'book.apply', { ...seen, change: late });

    expect(info.revision).toBe(3);
    expect(others.map(({ revision, change }) => [revision, change.label])).toEqual([[2, 'job J90']]);
    expect([...recordsOf(one).job.keys()]).toEqual(expect.arrayContaining(['J90', 'J91']));
  });

  test('an edit of what the other has changed meanwhile is refused, never laid over it', () => {
    const [one, other] = twoWindows();
    const seen = standing(other);
    const late = retitled(other, 'Ferry stairs');
    ask(one, 'book.apply', { ...standing(one), change: retitled(one, 'Quay hall') });

    expect(refused(other, 'book.apply', { ...seen, change: late })).toEqual({
      says: 'Changed in another window meanwhile: job J01.',
      readAgain: true,
    });
    expect(jobOf(one).title).toBe('Quay hall');
  });

  test('undo takes back only what the window has seen', () => {
    const [one, other] = twoWindows();
    const seen = standing(other);
    ask(one, 'book.apply', { ...standing(one), change: addedJob(one, 'J90') });

    expect(refused(other, 'book.undo', seen)?.readAgain).toBe(true);
    expect(recordsOf(one).job.has('J90')).toBe(true);
  });
});

function twoWindows() {
  const one = serviceAtHand();
  return [one, serviceAtHand(one.path)] as const;
}
