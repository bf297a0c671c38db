import { useState } from 'preact/hooks';
import type { EditHouse } from '#renderer/store/house-ask.ts';
import type { BookStore } from '#renderer/store/book-store.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { Button } from '#renderer/kit/button.tsx';
import { ChoiceField, Fields, TextField } from '#renderer/kit/field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import {
  replacements,
  searchedFields,
  type ReplaceInput,
  type Replacement,
} from '#shared-calc/acts/replace-in-recipe.ts';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { actNames } from '#shared-calc/words/act-names.ts';

const scopes = [
  { value: 'all', label: 'in rules and in words', fields: searchedFields },
  { value: 'rules', label: 'in rules and figures alone', fields: ['text'] },
  { value: 'words', label: 'in labels, sentences, notes, sections', fields: ['label', 'says', 'note', 'section'] },
] as const;

interface FindParts {
  readonly book: Pick<BookStore, 'records' | 'derived' | 'doAct' | 'say'>;
  readonly editHouse: EditHouse;
  readonly recipe: string;
  readonly close: () => void;
}

/** Finds words in a recipe and replaces them in one act, after each line was seen before and after. */
export function FindReplace({ book, editHouse, recipe, close }: FindParts) {
  const [find, setFind] = useState('');
  const [replace, setReplace] = useState('');
  const [whole, setWhole] = useState(true);
  const [scope, setScope] = useState<string>('all');
  const [wrong, setWrong] = useState<string>();
  const fields = scopes.find(({ value }) => value === scope)?.fields ?? searchedFields;
  const input: ReplaceInput = { recipe, find, replace, whole, fields: [...fields] };
  const found = find === '' ? [] : replacements(book.records.value, input);
  const run = () => {
    const written = () => book.say(`${placesSaid(found.length)} replaced.`);
    const direct = () => book.doAct('replaceInRecipe', input, written);
    const refused = editHouse({ act: 'replaceInRecipe', input }, direct, { written });
    setWrong(refused);
    return refused === undefined;
  };
  const isFaulty = found.some(({ fault }) => fault !== undefined);
  return (
    <AskDialog
      title={actNames.findReplace}
      does={found.length === 0 ? 'Replace' : `Replace ${placesSaid(found.length)}`}
      run={run}
      wrong={wrong}
      disabled={found.length === 0 || isFaulty}
      close={close}
    >
      {() => (
        <>
          <Fields look="wide">
            <TextField label="Find" text={find} typing={setFind} />
            <TextField label="Replace with" text={replace} typing={setReplace} />
            <ChoiceField label="Where" value={scope} options={scopes} choose={setScope} />
          </Fields>
          <Checkbox label="Whole words and names only" on={whole} turn={setWhole} />
          <RenameHint book={book} input={input} close={close} />
          {find !== '' && <p role="status">{found.length === 0 ? 'Nothing would change.' : changesSaid(found)}</p>}
          {found.length > 0 && <Found found={found} book={book} recipe={recipe} />}
        </>
      )}
    </AskDialog>
  );
}

interface FoundParts extends Pick<FindParts, 'book' | 'recipe'> {
  readonly found: readonly Replacement[];
}

function Found({ found, book, recipe }: FoundParts) {
  const called = calledByLines({ lines: book.derived.value.lines(recipe), columns: [] });
  return (
    <DialogScroll label="What would change">
      <Table
        rows={found}
        keyOf={({ line, field }) => `${line.id} ${field}`}
        columns={[
          { head: 'line', names: true, cell: ({ line }) => lineLabel(line) },
          { head: 'in', cell: ({ field }) => headingOf('line', field).toLowerCase() },
          { head: 'before', cell: ({ before }) => before },
          { head: 'after', cell: ({ after }) => after },
          { head: 'fault', cell: ({ fault }) => (fault ? sayActFault(fault, called) : '') },
        ]}
      />
    </DialogScroll>
  );
}

/** The name of a line is renamed through every rule that reads it, and not replaced letter by letter. */
function RenameHint({ book, input, close }: Pick<FindParts, 'book' | 'close'> & { readonly input: ReplaceInput }) {
  const { recipe, find, replace } = input;
  const line = book.derived.value.lines(recipe).find(({ name }) => name === find.trim());
  if (!line) return null;
  const rename = () => {
    if (book.doAct('renameLine', { line: line.id, name: replace }) === undefined) close();
  };
  return (
    <Hint>
      {find} is the name of a line.{' '}
      <Button look="plain" disabled={replace.trim() === ''} onClick={rename}>
        Rename it in every rule
      </Button>
    </Hint>
  );
}

function placesSaid(count: number): string {
  return count === 1 ? '1 place' : `${count} places`;
}

function changesSaid(found: readonly Replacement[]): string {
  const faults = found.filter(({ fault }) => fault !== undefined).length;
  const would = `${placesSaid(found.length)} would change`;
  return faults === 0 ? `${would}.` : `${would}; ${faults} could not be read after it, so nothing is replaced.`;
}
