import { z } from 'zod';
import type { Change } from '#shared-calc/records/change.ts';
import { ok } from '#shared-calc/result.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { act, runAct, type Act } from './act.ts';
import { sendToHouse } from './cell-acts.ts';
import { proposed, type Said } from './house-acts.ts';
import { editsIn, numbered } from './house-log.ts';
import { teachFromWatch, teachHouse } from './measure-acts.ts';
import { changeLine, removeLine, writeLine } from './recipe-acts.ts';
import { replaceInRecipe } from './replace-in-recipe.ts';
import { removeLines, takeLines } from './several-lines.ts';
import { keepForTank, writeLineFor } from './tank-line-acts.ts';

/** Edits of a house that a person is asked about first. */
const houseEdits = {
  sendToHouse,
  writeLine,
  changeLine,
  removeLine,
  removeLines,
  takeLines,
  replaceInRecipe,
  writeLineFor,
  keepForTank,
  teachHouse,
  teachFromWatch,
} as const;
const editNames = [
  'sendToHouse',
  'writeLine',
  'changeLine',
  'removeLine',
  'removeLines',
  'takeLines',
  'replaceInRecipe',
  'writeLineFor',
  'keepForTank',
  'teachHouse',
  'teachFromWatch',
] as const;

/** An act of those and its input. */
export type HouseEdit = {
  readonly [N in keyof typeof houseEdits]: { readonly act: N; readonly input: InputOf<N> };
}[keyof typeof houseEdits];
type InputOf<N extends keyof typeof houseEdits> = (typeof houseEdits)[N] extends Act<infer I> ? I : never;

const Edit = z.strictObject({
  act: z.enum(editNames),
  input: z.unknown().describe('The input of that act.'),
  note: z.string().max(10_000).default(''),
  as: z.enum(['in force', 'proposal']),
});

export const editHouse = act<z.infer<typeof Edit>>({
  name: 'editHouse',
  says: 'Does an edit of a house recipe with a note in its log, or keeps it as a proposal.',
  input: Edit,
  run: (derived, { act: name, input, note, as }) => {
    const edit: Act = houseEdits[name];
    const done = runAct(edit, derived, input);
    if (!done.ok) return done;
    const [first] = editsIn(derived.records, done.value);
    const fromJob = jobOf(input);
    const said = { note, ...(fromJob !== undefined && { fromJob }) };
    if (as === 'proposal') return proposed(derived, first?.recipe ?? '', done.value, said);
    return ok(note.trim() === '' ? done.value : withNote(derived, done.value, said));
  },
});

function jobOf(input: unknown): string | undefined {
  const job = new Map<string, unknown>(Object.entries(input ?? {})).get('job');
  return typeof job === 'string' ? job : undefined;
}

/** An edit whose entry in the log has a note is an entry of its own. */
function withNote({ records, today: on }: Derived, change: Change, said: Said): Change {
  const bare: Change = {
    ...change,
    added: change.added.filter(({ kind }) => kind !== 'houseChange'),
    updated: change.updated.filter(({ kind }) => kind !== 'houseChange'),
    removed: change.removed.filter(({ kind }) => kind !== 'houseChange'),
  };
  const entries = editsIn(records, change).map((edit) => ({ ...edit, on, ...said, inForceOn: on }));
  return { ...bare, added: [...bare.added, ...numbered(records, entries)] };
}
