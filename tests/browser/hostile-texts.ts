import { ChangeSchema } from '#shared-calc/records/change-schema.ts';
import type { RecordKind } from '#shared-calc/records/records.ts';
import type { Act } from './write-in.ts';

/** Texts that a careless page would run, a careless list would evaluate, or a careless field would break on. */
export const hostileTexts: readonly (readonly [what: string, text: string])[] = [
  ['markup', '<img src=x onerror="window.ran=1"><script>window.ran=1</script><svg onload="window.ran=1">'],
  ['a link that runs', 'javascript:window.ran=1'],
  ['the end of a tag', '"></textarea></dialog><iframe srcdoc="<script>parent.ran=1</script>">'],
  ['a template', '{{constructor.constructor("window.ran=1")()}} ${window.ran=1}'],
  ['a formula with a link', '=HYPERLINK("http://elsewhere.example","clay")'],
  ['a plus first', '+1+cmd|" /C calc"!A0'],
  ['a minus first', '-2+3'],
  ['an at first', '@SUM(1,1)'],
  ['full-width signs', '＝1＋1'],
  ['a quote and a formula', '"=1+1"'],
  ['quotes and commas', `a "b", 'c'; d, \`e\``],
  ['right-to-left marks', '\u202Etxt.exe\u202C \u2067=1+1\u2069'],
  ['a zero-width mark and a formula', '\u200B=1+1'],
  ['emoji and marks', '🪴 👩‍🌾 a\u0301 ﷽'],
];

/** The fields of a record with free text. */
const wordFields: Readonly<Partial<Record<RecordKind, readonly string[]>>> = {
  workshop: ['name', 'place', 'letterhead', 'terms', 'payment'],
  supplier: ['name', 'sells', 'note'],
  tank: ['label', 'note'],
  material: ['label', 'note'],
  plant: ['name', 'harm', 'note'],
  cultureKind: ['label', 'note'],
  animalKind: ['label', 'harmToPeople', 'permits', 'sourceNote', 'note'],
  rate: ['label'],
  taxClass: ['label'],
  margin: ['label'],
  closedDay: ['label'],
  recipe: ['title', 'note'],
  line: ['label', 'note', 'says', 'decides', 'caution'],
  job: ['title', 'client', 'contact', 'site', 'access', 'audience', 'animals', 'area', 'nextAct', 'note'],
  size: ['label'],
  localValue: ['note'],
  tub: ['place', 'note'],
  move: ['note'],
};

/** Makes every text of a book hostile, with different texts in turn. */
export const withHostileWords: Act = (records) => {
  let turn = 0;
  const next = () => hostileTexts[turn++ % hostileTexts.length]?.[1] ?? '';
  const updated = Object.entries(wordFields).flatMap(([kind, fields]) =>
    [...records[kind as RecordKind].values()].map((from) => ({
      kind,
      from,
      to: { ...from, ...Object.fromEntries(fields.map((field) => [field, next()])) },
    })),
  );
  return { ok: true, value: ChangeSchema.parse({ label: 'hostile words', added: [], updated, removed: [] }) };
};

/** Whether another program may evaluate a cell of a list; a leading apostrophe makes it text, a number stays one. */
export function isRun(cell: string): boolean {
  if (/^-?\d+([.,]\d+)?$/.test(cell)) return false;
  return /^[\s"\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFEFF]*[=+\-@＝＋－＠]/u.test(cell) || /^[\t\r\n\0]/u.test(cell);
}
