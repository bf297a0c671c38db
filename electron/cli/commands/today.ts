import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { dueOf, dueWithin } from '#shared-calc/derive/today.ts';
import { startList, type StartEntry } from '#shared-calc/derive/start-list.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import { sayDays } from '#shared-calc/prepare/say-day.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { today } from '#electron/service/today.ts';

/** What is to be done today and what is overdue; with days, what comes until then, too. */
export const todayCommand: Command = {
  name: 'today',
  usage: 'today [--on DATE] [--days N]: what is to be done today and what is overdue, and up to N days on',
  options: { ...bookOption, on: 'text', days: 'text' },
  misuse,
  run: (given) =>
    withBook(given, (book) => {
      const asked = readDay(given, 'on');
      if (!asked.ok) return refusal(asked.fault);
      const on = asked.value ?? today();
      const derived = derive(book.records(), on);
      const items = dueWithin(dueOf(derived), on, Number(given.text('days') ?? 0));
      const start = startList(derived);
      return {
        is: 'answer',
        json: { on, items: items.map(itemJson), start: start.map(startJson) },
        table: () => [...startTable(start), itemTable(items, derived.display)].join('\n'),
      };
    }),
};

function misuse(given: Arguments): string | undefined {
  const [word] = given.words;
  if (word !== undefined) return `What is ${word} for?`;
  const days = given.text('days');
  return days === undefined || /^\d{1,4}$/.test(days) ? undefined : `--days ${days}: give whole days, as 7.`;
}

function itemJson({ key, day, what, who, why, late, job, client, tub, order, decides }: TodayItem): unknown {
  return { key, day, what, who, why, late, job, client, tub, order, decides };
}

function startJson({ id, label, state, needs, says, missing }: StartEntry): unknown {
  return {
    id,
    label,
    state,
    needs,
    says,
    missing: missing.map(({ what, of, label: named }) => ({ what, of, label: named })),
  };
}

function startTable(start: readonly StartEntry[]): readonly string[] {
  if (start.length === 0) return [];
  const rows = start.map(({ label, state, needs, says }) => [
    label,
    state === 'done' ? 'done' : `needs ${needs}`,
    says,
  ]);
  return [textTable(['to a first quote', '', ''], rows), ''];
}

function itemTable(items: readonly TodayItem[], { dateOrder }: SaidDays): string {
  if (items.length === 0) return 'Nothing to do.';
  const rows = items.map(({ day, what, job = '', client = '', who, why, late, decides }) => [
    writeDay(day, dateOrder),
    what,
    [job, client].filter((part) => part !== '').join(' '),
    who,
    late > 0 ? `${sayDays(late)} late` : '',
    decides ? 'decides' : '',
    why,
  ]);
  return textTable(['day', 'what', 'for', 'who', 'late', '', 'why'], rows);
}
