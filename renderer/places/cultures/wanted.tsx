import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { KindDemands } from '#shared-calc/derive/kind-demands.ts';
import css from '#renderer/kit/part-page.module.css';

interface WantedParts {
  readonly board: CultureBoard;
  readonly demands: KindDemands;
  readonly display: Display;
}

/** What the builds need, from which tub, and which new tubs to start by when. */
export function Wanted({ board, demands: { demands }, display }: WantedParts) {
  const write = (figure: number) => writeNumber(figure, 0, display);
  if (demands.length === 0) return <EmptyNote>No job that is paid and still to be built asks for it.</EmptyNote>;
  const tubsOn = (date: string) => board.served.find(({ claim }) => claim.date === date)?.from ?? [];
  return (
    <>
      <Table
        class={css['acts']}
        caption="What the builds ask for"
        rows={demands}
        keyOf={({ job }) => job}
        columns={[
          { head: 'Build', cell: ({ date }) => paperWeekday(date, display) },
          { head: 'Job', names: true, cell: ({ job, title }) => `${job} ${title}` },
          { head: 'Animals', figure: true, cell: ({ animals }) => write(animals) },
          {
            head: 'From tub',
            figure: true,
            cell: ({ date }) =>
              tubsOn(date)
                .map(({ tub }) => tub)
                .join(', '),
          },
        ]}
      />
      <p class={css['counted']}>{keepWords(board, display)}</p>
      {board.starts.length > 0 && (
        <ul aria-label="Tubs to start">
          {board.starts.map((start, at) => (
            <li key={`${at + 1}`}>
              new {at + 1}: started by {paperWeekday(start, display)}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function keepWords({ tubs, spare, fewer }: CultureBoard, display: Display): string {
  const count = (figure: number) => `${figure} ${figure === 1 ? 'tub' : 'tubs'}`;
  const start = tubs === 0 ? 'The tubs that stand serve all of it' : `Start ${count(tubs)} beside those that stand`;
  const or = fewer ? ` Or ${count(fewer.tubs)}, all started by ${paperWeekday(fewer.startBy, display)}.` : '';
  return `${start}; ${spare === 0 ? 'no spare is wanted' : `${spare} spare`}.${or}`;
}
