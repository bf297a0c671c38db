import { Table, type Column } from '#renderer/kit/table.tsx';
import { sheetsOfList, type ListColumn, type ListPaper, type ListRow } from './list-paper.ts';
import { Letterhead, Paper, Sheet } from './paper.tsx';
import { DrawnSizes } from './size-drawings.tsx';
import css from './painted-list.module.css';

interface PaintedListParts {
  readonly title: string;
  readonly paper: ListPaper;
}

/** A grid as a list; columns that do not fit beside each other stand on further sheets. */
export function PaintedList({ title, paper }: PaintedListParts) {
  const { letterhead, notes, names, groups, drawn } = paper;
  const { sideways, sheets } = sheetsOfList(paper);
  return (
    <Paper label={title} foot={title} {...(sideways && { look: 'sideways' })}>
      {sheets.map((columns, at) => {
        const part = sheets.length === 1 ? title : `${title}: ${partWords(columns, at, sheets.length)}`;
        return (
          <Sheet key={at} label={part}>
            <Letterhead title={part} who={letterhead} />
            {notes.length > 0 && <p>{notes.join(' ')}</p>}
            {drawn && <DrawnSizes sizes={drawn(columns.map(({ key }) => key))} />}
            <Table
              look="paper"
              class={css['list']}
              label={part}
              groups={groups.map((group) => ({ ...group, look: group.head === undefined ? css['alone'] : undefined }))}
              keyOf={({ key }) => key}
              mark={({ strong }) => (strong ? 'sum' : undefined)}
              columns={[...names, ...columns].map(columnOf)}
            />
          </Sheet>
        );
      })}
    </Paper>
  );
}

/** `T03 to T07, sheet 1 of 2` */
function partWords(columns: readonly ListColumn[], at: number, all: number): string {
  const [first, last] = [columns[0]?.head ?? '', columns.at(-1)?.head ?? ''];
  return `${first === last ? first : `${first} to ${last}`}, sheet ${at + 1} of ${all}`;
}

function columnOf({ key, head, under = [], figure }: ListColumn, at: number): Column<ListRow> {
  return {
    figure,
    names: at === 0,
    head: (
      <>
        {head}
        {under.map((words) => (
          <small key={words}>{words}</small>
        ))}
      </>
    ),
    cell: (row) => {
      const { text, aside = '', given = false } = row.cellOf(key);
      return (
        <>
          {figure && aside !== '' && <small>{aside} </small>}
          {given ? <u>{text}</u> : text}
          {!figure && aside !== '' && <small> {aside}</small>}
        </>
      );
    },
  };
}
