import { actNames } from '#shared-calc/words/act-names.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { contextNow, type BookContext, type BookApi } from '#renderer/books/book-api.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog, DialogScroll } from '#renderer/kit/dialog.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { isEmptyChange } from '#shared-calc/records/change.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import type { ImportPreview } from './import-preview.ts';
import { pickText, type PickedText } from './pick-text.ts';
import css from './files.module.css';

export interface ListImportParts {
  readonly api: BookApi;
  readonly title: string;
  readonly list: ActInputs['takeInList']['list'];
  /** The headings of the list, in a sentence. */
  readonly needs: string;
  readonly preview: (text: string, context: BookContext) => ImportPreview;
}

export interface ListImport {
  /** Asks for a file and shows what it would change. */
  readonly open: () => void;
  readonly dialog: () => ComponentChildren;
}

/** Imports a list from a file: shown before it is imported, and all of it or nothing. */
export function listImport(parts: ListImportParts): ListImport {
  const picked = signal<PickedText | 'asked' | undefined>(undefined);
  return {
    open: () => (picked.value = 'asked'),
    dialog: () =>
      picked.value && <ImportDialog parts={parts} picked={picked.value} pick={(next) => (picked.value = next)} />,
  };
}

interface SheetParts {
  readonly parts: ListImportParts;
  readonly picked: PickedText | 'asked';
  readonly pick: (next: PickedText | undefined) => void;
}

function ImportDialog({ parts, picked, pick }: SheetParts) {
  const { api, title, needs, list } = parts;
  const preview = picked === 'asked' ? undefined : parts.preview(picked.text, contextNow(api));
  const mayTake = preview !== undefined && preview.refused.length === 0 && !isEmptyChange(preview.change);
  const take = (leave: () => void) => {
    if (!mayTake || picked === 'asked') return;
    api.doAct('takeInList', { list, csv: picked.text, file: picked.name }, leave);
  };
  return (
    <Dialog title={title} wide close={() => pick(undefined)}>
      {(leave) => (
        <>
          <p>{needs}</p>
          {preview && picked !== 'asked' && <Preview preview={preview} name={picked.name} />}
          <Buttons>
            <Button onClick={leave}>{actNames.cancel}</Button>
            <Button look={mayTake ? 'framed' : 'main'} onClick={() => pickText(document, pick, api.refuse)}>
              {preview ? 'Choose another file' : actNames.chooseFile}
            </Button>
            {preview && (
              <Button look="main" disabled={!mayTake} onClick={() => take(leave)}>
                Import
              </Button>
            )}
          </Buttons>
        </>
      )}
    </Dialog>
  );
}

function Preview({ preview, name }: { readonly preview: ImportPreview; readonly name: string }) {
  return (
    <>
      <p role="status">
        <b>{name}</b>: {sayPreview(preview)}
      </p>
      {preview.refused.length > 0 && (
        <DialogScroll class={css['refused']} label="Refused rows">
          <ul>
            {preview.refused.map(({ row, fault }, index) => (
              <li key={index}>
                <Sign name="stop" />
                Row {row}: {sayRowFault(fault)}
              </li>
            ))}
          </ul>
        </DialogScroll>
      )}
      {preview.rows.length > 0 && <TakenRows preview={preview} />}
    </>
  );
}

function TakenRows({ preview: { heading, figures, rows } }: { readonly preview: ImportPreview }) {
  return (
    <DialogScroll label="Rows that can be imported">
      <Table
        rows={rows}
        keyOf={({ row }) => row}
        columns={heading.map((head, at) => ({
          head,
          figure: figures.includes(at),
          cell: ({ cells }: ImportPreview['rows'][number]) => cells[at],
        }))}
      />
    </DialogScroll>
  );
}

function sayPreview({ rows, refused, change }: ImportPreview): string {
  const many = (count: number) => (count === 1 ? '1 row' : `${count} rows`);
  if (refused.length > 0)
    return `${many(refused.length)} refused, so that nothing is imported. Put them right in the file and choose it again.`;
  if (isEmptyChange(change)) return `all of its ${many(rows.length)} stand in the book already.`;
  return `${many(rows.length)} can be imported.`;
}
