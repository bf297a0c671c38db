import { useState } from 'preact/hooks';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { ChoiceField, Fields, TextField } from '#renderer/kit/field.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { RecipeStore } from '#renderer/store/recipe-store.ts';
import { lineRoles } from '#shared-calc/fields/recipe.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { entryOf } from './put-fields.ts';

interface AddParts {
  readonly book: Pick<BookStore, 'doAct'>;
  readonly store: Pick<RecipeStore, 'chosen' | 'faces'>;
  readonly recipe: string;
  /** Shows the new line, by its name. */
  readonly goTo: (line: string) => void;
  readonly close: () => void;
}

/** Asks what a new line is and what it is called; it stands after the line where the cursor is. */
export function AddLineDialog({ book, store, recipe, goTo, close }: AddParts) {
  const [role, setRole] = useState<Line['role']>('given');
  const [label, setLabel] = useState('');
  const [wrong, setWrong] = useState<string>();
  const [after] = useState(store.chosen.peek());
  const before = after === undefined ? undefined : store.faces.value.of(after);
  const run = () => {
    const refused = book.doAct('addLine', { recipe, after, role, label }, ({ added: [made] }) => {
      if (made?.kind === 'line') goTo(made.record.name);
    });
    setWrong(refused);
    return refused === undefined;
  };
  return (
    <AskDialog title={actNames.addLine} does="Add it" run={run} wrong={wrong} close={close}>
      {(enter) => (
        <>
          <Fields look="wide">
            <ChoiceField
              {...entryOf('role')}
              value={role}
              options={recordFields.line.role.options}
              choose={(word) => setRole(lineRoles.find((each) => each === word) ?? role)}
            />
            <TextField label={entryOf('label').label} text={label} typing={setLabel} enter={enter} />
          </Fields>
          <MutedLine>
            {before ? `After ${before.label}, in ${before.line.section}.` : 'At the end of the recipe.'}
          </MutedLine>
        </>
      )}
    </AskDialog>
  );
}
