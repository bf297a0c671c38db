import { useState } from 'preact/hooks';
import { Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog, DialogScroll } from '#renderer/kit/dialog.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { Difference } from '#renderer/store/compare-columns.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';

interface CompareParts {
  readonly store: PageStore;
  readonly one: string;
}

/** Compares two sizes: differences in measurements and written values, and their results. */
export function CompareSizes({ store, one: first }: CompareParts) {
  const heads = store.bench.view.value.columns;
  const options = heads.map(({ key, label }) => ({ value: key, label: label === key ? key : `${key} ${label}` }));
  const [one, setOne] = useState(first);
  const [other, setOther] = useState(heads.find((head) => head.key !== first)?.key ?? first);
  const found = store.bench.compare(one, other);
  const go = (line: string) => {
    if (store.bench.reveal(line)) store.strips.current?.go({ row: line, column: other });
  };
  return (
    <Dialog title="What differs" wide close={() => (store.dialog.value = undefined)}>
      {(leave) => {
        const show = (line: string) => {
          leave();
          go(line);
        };
        return (
          <>
            <Fields>
              <PickOne label="Size" value={one} options={options} choose={setOne} />
              <PickOne label="beside" value={other} options={options} choose={setOther} />
            </Fields>
            <DialogScroll label="Lines that differ">
              <Differences
                title="Measured or written otherwise"
                of={found?.causes ?? []}
                heads={[one, other]}
                go={show}
                why
              />
              <Differences
                title="What comes of it"
                of={found?.results ?? []}
                heads={[one, other]}
                go={show}
                why={false}
              />
            </DialogScroll>
            <Buttons>
              <Button look="main" onClick={leave}>
                Close
              </Button>
            </Buttons>
          </>
        );
      }}
    </Dialog>
  );
}

interface DifferenceParts {
  readonly title: string;
  readonly of: readonly Difference[];
  readonly heads: readonly [string, string];
  readonly go: (line: string) => void;
  readonly why: boolean;
}

function Differences({ title, of, heads, go, why }: DifferenceParts) {
  if (of.length === 0) return <MutedLine>{title}: nothing.</MutedLine>;
  return (
    <>
      <h3>{title}</h3>
      <Table
        label={title}
        rows={of}
        keyOf={({ line }) => line}
        columns={[
          {
            head: 'Line',
            names: true,
            cell: ({ line, label }) => (
              <Button look="plain" onClick={() => go(line)}>
                {label}
              </Button>
            ),
          },
          { head: heads[0], figure: true, cell: (each) => each.one },
          { head: heads[1], figure: true, cell: (each) => each.other },
          ...(why ? [{ head: 'Why', cell: (each: Difference) => each.why }] : []),
        ]}
      />
    </>
  );
}
