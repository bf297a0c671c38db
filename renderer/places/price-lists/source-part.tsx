import { useEffect, useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { pickText } from '#renderer/files/pick-text.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { ChoiceField, Fields, TextField } from '#renderer/kit/field.tsx';
import { Fault, Hint } from '#renderer/kit/note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { listedPrices } from '#shared-calc/papers/price-list-csv.ts';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { nextCode } from '#shared-calc/records/next-code.ts';
import { freshRecord } from '#shared-calc/records/edit-field.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { ListState } from './list-state.ts';
import css from './price-lists.module.css';

interface SourceParts {
  readonly state: ListState;
  readonly context: BookContext;
}

/** Where a list comes in: a file, a drop anywhere in the window, or a table that is pasted. */
export function SourcePart({ state, context }: SourceParts) {
  usePaste(state);
  const { api, take } = state;
  const { articles = {}, columns = {} } = context.records.supplier.get(state.supplier.value)?.priceList ?? {};
  const [headings, matched] = [Object.values(columns), Object.keys(articles).length];
  return (
    <div class={css['source']}>
      <WhoseList state={state} context={context} />
      <div class={css['drop']}>
        <p>
          <b>Choose the price list that a supplier sent, drop it on the window, or paste a table here.</b>
        </p>
        <p>
          CSV or text, with any delimiter, in any usual encoding; or cells copied from a table program or a web page.
          Nothing of it is in the book before you import it.
        </p>
        <Buttons>
          <Button look="main" onClick={() => pickText(document, take, api.refuse)}>
            {actNames.chooseFile}
          </Button>
        </Buttons>
      </div>
      {headings.length > 0 && (
        <Hint>
          Remembered of this supplier: the headings {headings.map((heading) => `“${heading}”`).join(', ')}
          {matched > 0 && `, and ${matched === 1 ? '1 article' : `${matched} articles`}`}.
        </Hint>
      )}
      <Standing state={state} context={context} />
    </div>
  );
}

interface SupplierPrices {
  readonly id: string;
  readonly name: string;
  readonly prices: number;
  /** The latest day from which one holds. */
  readonly newest: string;
}

/** How old the prices of each supplier are. */
function Standing({ state, context: { records, today, display } }: SourceParts) {
  const rows = [...records.supplier.values()].map(({ id, name }): SupplierPrices => {
    const listed = listedPrices(records, today, id);
    const days = listed.map(({ from }) => from).toSorted();
    return { id, name: name || id, prices: listed.length, newest: days.at(-1) ?? '' };
  });
  if (rows.length === 0) return null;
  return (
    <Table
      label="Prices in the book"
      rows={rows}
      keyOf={({ id }) => id}
      columns={[
        {
          head: 'Supplier',
          names: true,
          cell: ({ id, name }) => (
            <Button look="plain" onClick={() => state.chooseSupplier(id)}>
              {name}
            </Button>
          ),
        },
        { head: 'Prices in the book', figure: true, cell: ({ prices }) => prices },
        { head: 'Newest', cell: ({ newest }) => (newest === '' ? 'none yet' : writeDay(newest, display.dateOrder)) },
        { head: 'Its lists', cell: ({ id }) => (records.supplier.get(id)?.priceList ? 'remembered' : 'not seen yet') },
      ]}
    />
  );
}

/** A table that is pasted anywhere but into a field. */
function usePaste({ take }: ListState): void {
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const { target, clipboardData } = event;
      if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return;
      const html = clipboardData?.getData('text/html') ?? '';
      const isTable = /<tr[\s>]/i.test(html);
      const text = isTable ? html.replace(/^.*?(?=<table)/is, '') : (clipboardData?.getData('text/plain') ?? '');
      if (text.trim() === '') return;
      event.preventDefault();
      take({ name: 'pasted table', text });
    };
    document.addEventListener('paste', paste);
    return () => document.removeEventListener('paste', paste);
  }, []);
}

/** Picks the supplier, or adds one by its name. */
export function WhoseList({ state, context }: SourceParts) {
  const suppliers = [...context.records.supplier.values()];
  const [isNew, setNew] = useState(false);
  const options = [
    { value: '', label: 'not said yet' },
    ...suppliers.map(({ id, name }) => ({ value: id, label: name || id })),
    { value: NEW, label: 'a new supplier' },
  ];
  const choose = (value: string) => {
    setNew(value === NEW);
    if (value !== NEW) state.chooseSupplier(value);
  };
  return (
    <>
      <Fields look="short">
        <ChoiceField
          label="Whose list it is"
          value={isNew ? NEW : state.supplier.value}
          options={options}
          choose={choose}
        />
      </Fields>
      {isNew && <NewSupplier state={state} context={context} done={() => setNew(false)} />}
    </>
  );
}

/** The value of no supplier: codes have no blanks. */
const NEW = 'a new one';

function NewSupplier({ state, context, done }: SourceParts & { readonly done: () => void }) {
  const [name, setName] = useState('');
  const [wrong, setWrong] = useState<string>();
  const add = () => {
    if (name.trim() === '') return setWrong('Give the name.');
    const id = nextCode('S', context.records.supplier.keys());
    const refused = state.api.doAct('put', {
      kind: 'supplier',
      record: freshRecord('supplier', id, { name: name.trim() }),
    });
    setWrong(refused);
    if (refused !== undefined) return;
    state.chooseSupplier(id);
    done();
  };
  return (
    <>
      <Fields look="short">
        <TextField
          label={headingOf('supplier', 'name')}
          of="the new supplier"
          text={name}
          typing={setName}
          enter={add}
        />
      </Fields>
      {wrong !== undefined && <Fault role="alert">{wrong}</Fault>}
      <Buttons>
        <Button onClick={add}>Add the supplier</Button>
      </Buttons>
    </>
  );
}
