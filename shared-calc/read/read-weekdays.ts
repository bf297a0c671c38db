import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

/** From 1 Monday to 7 Sunday. */
const names = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

/** Weekdays as text: `Mon-Fri`, `Tue Thu`. Three or more in a row become a range. */
export function writeWeekdays(days: readonly number[]): string {
  const sorted = [...new Set(days)].toSorted((a, b) => a - b);
  const runs: number[][] = [];
  for (const day of sorted) {
    const run = runs.at(-1);
    if (run && run.at(-1) === day - 1) run.push(day);
    else runs.push([day]);
  }
  return runs.map(sayRun).join(' ');
}

function sayRun(run: readonly number[]): string {
  const said = run.map((day) => names[day - 1] ?? '');
  return said.length > 2 ? `${said[0]}-${said.at(-1)}` : said.join(' ');
}

/** Parses `Mon-Fri`, `Tue, Wed, Thu` or full names of days; a range may cross the end of the week. */
export function readWeekdays(text: string, name: string): Result<readonly number[], EntryFault> {
  const days = new Set<number>();
  for (const word of text.split(/[\s,;]+/).filter((part) => part !== '')) {
    const [first = '', last = first, ...more] = word.split('-');
    const from = numberOf(first);
    const to = numberOf(last);
    if (from === undefined || to === undefined || more.length > 0) {
      return failed({ kind: 'not-a-weekday', name, text: word });
    }
    for (let step = 0; step <= (to - from + 7) % 7; step += 1) days.add(((from - 1 + step) % 7) + 1);
  }
  return ok([...days].toSorted((a, b) => a - b));
}

function numberOf(word: string): number | undefined {
  const at = names.findIndex((name) => word.length >= 2 && isBegun(word, name));
  return at < 0 ? undefined : at + 1;
}

const wholeNames = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];

function isBegun(word: string, name: string): boolean {
  const small = word.toLowerCase();
  return wholeNames.some((whole) => whole.startsWith(name.toLowerCase()) && whole.startsWith(small));
}
