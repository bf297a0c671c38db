import { describe, expect, test } from 'vitest';
import type { Change } from '#shared-calc/records/change.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { bookAtHand, type BookAtHand } from './book-at-hand.ts';

function jobOf({ book }: BookAtHand): Job {
  const job = book.records.peek().job.get('J01');
  if (!job) throw new Error('no job');
  return job;
}

function titled(hand: BookAtHand, title: string, from: Job = jobOf(hand)): Change {
  return { label: `title ${title}`, added: [], updated: [{ kind: 'job', from, to: { ...from, title } }], removed: [] };
}

function put(hand: BookAtHand, title: string, label = `title ${title}`): void {
  hand.book.doAct('putAll', { label, records: [{ kind: 'job', record: { ...jobOf(hand), title } }] });
}

const titles = ({ book, service }: BookAtHand) => [
  book.records.peek().job.get('J01')?.title,
  service.records().job.get('J01')?.title,
];

describe('openBookStore', () => {
  test('an edit is on the page at once and in the book soon after, and the line names what undo takes back', async () => {
    const hand = await bookAtHand();
    put(hand, 'Lobby');
    expect(titles(hand)).toEqual(['Lobby', 'Ferry waiting hall']);
    expect(hand.book.waiting.peek()).toBe(1);
    await hand.quiet();
    expect(titles(hand)).toEqual(['Lobby', 'Lobby']);
    const { saved, ...steps } = hand.book.line.peek();
    expect([saved.replace(/\d/g, '0'), steps]).toEqual(['Saved 00:00', { undo: 'title Lobby' }]);
  });

  test('edits reach the book in the order in which they were made', async () => {
    const hand = await bookAtHand();
    for (const title of ['One', 'Two', 'Three']) put(hand, title);
    await hand.quiet();
    expect(hand.service.entries().map((entry) => entry.change.label)).toEqual([
      'title One',
      'title Two',
      'title Three',
    ]);
  });

  test('a refused edit is taken back and its reason said', async () => {
    const hand = await bookAtHand();
    put(hand, 'Lobby', 'never');
    await hand.quiet();
    expect(titles(hand)).toEqual(['Ferry waiting hall', 'Ferry waiting hall']);
    expect(hand.book.line.peek().said).toEqual({ words: 'The book refuses this. Not kept: never.', refused: true });
  });

  test("another window's edit is taken in, and our own on top of it", async () => {
    const hand = await bookAtHand();
    const tank = hand.service.records().tank.get('T07');
    if (!tank) throw new Error('no tank');
    put(hand, 'Lobby');
    hand.service.elsewhere({
      label: 'T07',
      added: [],
      updated: [{ kind: 'tank', from: tank, to: { ...tank, note: 'scratched' } }],
      removed: [],
    });
    await hand.quiet();
    expect(titles(hand)).toEqual(['Lobby', 'Lobby']);
    expect(hand.book.records.peek().tank.get('T07')?.note).toBe('scratched');
    expect(hand.book.info.peek().revision).toBe(2);
  });

  test('an edit of what another window changed meanwhile is not laid over it, and that is said', async () => {
    const hand = await bookAtHand();
    hand.service.die();
    put(hand, 'Ours');
    await hand.quiet();
    hand.service.elsewhere(titled(hand, 'Theirs', hand.service.records().job.get('J01') ?? jobOf(hand)));
    hand.service.comeBack();
    await hand.quiet();
    expect(titles(hand)).toEqual(['Theirs', 'Theirs']);
    expect(hand.book.line.peek().said?.words).toContain('Not kept: title Ours');
  });

  test('while the book does not answer edits wait, are said to, and go through when it is back', async () => {
    const hand = await bookAtHand();
    hand.service.die();
    put(hand, 'One');
    put(hand, 'Two');
    await hand.quiet();
    expect(hand.book.line.peek().saved).toBe('Not saved: 2 edits wait for the book to answer');
    hand.service.comeBack();
    await hand.quiet();
    expect(titles(hand)).toEqual(['Two', 'Two']);
    expect(hand.book.line.peek().saved).toMatch(/^Saved /);
  });

  test('a service that was started anew over the same book takes what waited', async () => {
    const hand = await bookAtHand();
    hand.service.die();
    put(hand, 'One');
    await hand.quiet();
    hand.service.comeBack({ anew: true });
    await hand.quiet();
    expect(titles(hand)).toEqual(['One', 'One']);
  });

  test('a service that is back without saying so is found by asking again', async () => {
    const hand = await bookAtHand();
    hand.service.die();
    put(hand, 'One');
    await hand.quiet();
    hand.service.comeBack();
    hand.clock.pass(2000);
    await hand.quiet();
    expect(titles(hand)).toEqual(['One', 'One']);
  });

  test('undo and redo go through the book and say what they did', async () => {
    const hand = await bookAtHand();
    put(hand, 'Lobby');
    hand.book.undo();
    await hand.quiet();
    expect([titles(hand), hand.book.line.peek().said?.words, hand.book.line.peek().redo]).toEqual([
      ['Ferry waiting hall', 'Ferry waiting hall'],
      'Undone: title Lobby',
      'title Lobby',
    ]);
    hand.book.redo();
    await hand.quiet();
    expect([titles(hand), hand.book.line.peek().said?.words]).toEqual([['Lobby', 'Lobby'], 'Done again: title Lobby']);
  });

  test('another book that is opened is read whole', async () => {
    const hand = await bookAtHand();
    hand.service.openOther({ ...hand.service.records(), job: new Map() });
    await hand.quiet();
    expect([hand.book.info.peek().name, hand.book.records.peek().job.size]).toEqual(['other.loamwright', 0]);
  });

  test('an edit that changes nothing is no edit', async () => {
    const hand = await bookAtHand();
    hand.book.doAct('put', { kind: 'job', record: jobOf(hand) });
    await hand.quiet();
    expect(hand.service.entries()).toEqual([]);
  });

  test('what became of an edit that is lost stays said when the person moves on', async () => {
    const hand = await bookAtHand();
    put(hand, 'Lobby', 'never');
    await hand.quiet();
    hand.clock.pass(5_000);
    hand.book.moveOn();
    expect(hand.book.line.peek().said?.words).toBe('The book refuses this. Not kept: never.');
  });
});
