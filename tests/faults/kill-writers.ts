import { setTimeout as wait } from 'node:timers/promises';
import { expect } from 'vitest';
import { adding, tankOf } from '#tests/electron/book/sample-records.ts';
import { newBook, reopen } from '#tests/electron/book/book-at-hand.ts';
import { startChild } from '#tests/faults/child.ts';

/** Kills a writing program this many times, and checks after each that everything it reported as written is there. */
export async function killWriters(times: number): Promise<number> {
  const { path, close } = newBook(adding('begin', { kind: 'tank', record: tankOf('T07', { note: '0' }) }));
  close();
  let reported = 1;
  for (let nth = 0; nth < times; nth += 1) {
    const child = startChild('write-until-killed.ts', path);
    await child.nextLine();
    await wait((nth * 37) % 60);
    child.process.kill('SIGKILL');
    await child.end();
    reported = Number(child.lines.at(-1));
    expectWhole(path, reported);
  }
  return reported;
}

/** One edit more than reported may exist: the program was killed between writing and reporting. */
function expectWhole(path: string, told: number): void {
  const book = reopen(path);
  const { supplier, tank } = book.records();
  const report = book.check();
  const revision = book.revision();
  book.close();

  expect([told, told + 1]).toContain(revision);
  expect(tank.get('T07')?.note).toBe(String(supplier.size));
  expect(report).toMatchObject({ ok: true, value: { sound: true, findings: [], revision } });
}
