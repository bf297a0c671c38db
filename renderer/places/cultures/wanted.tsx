import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { KindDemands } from '#shared-calc/derive/kind-demands.ts';
import css from '#renderer/kit/part-page.module.css';

interface WantedParts {
  readonly board: CultureBoard;
  readonly demands: KindDemands;
  readonly decimalComma: boolean;
}

/** What the builds need, from which tub, and how many tubs to keep. */
export function Wanted({ board, demands: { demands }, decimalComma }: WantedParts) {
  const write = (figure: number) => writeNumber(figure, 0, { decimalComma });
  if (demands.length === 0) return <EmptyNote>No job that is paid and still to be built asks for it.</EmptyNote>;
  const harvestsOn = (date: string) => board.harvests.filter((harvest) => harvest.date === date).map(({ tub }) => tub);
  return (
    <>
      <Table
        class={css['acts']}
        caption="What the builds ask for"
        rows={demands}
        keyOf={({ job }) => job}
        columns={[
          { head: 'Build', cell: ({ date }) => paperWeekday(date) },
          { head: 'Job', names: true, cell: ({ job, title }) => `${job} ${title}` },
          { head: 'Animals', figure: true, cell: ({ animals }) => write(animals) },
          { head: 'From tub', figure: true, cell: ({ date }) => harvestsOn(date).join(', ') },
        ]}
      />
      <p class={css['counted']}>
        Keep {board.tubs} {board.tubs === 1 ? 'tub' : 'tubs'} and {board.spare} spare
        {board.startBy !== undefined && `, the first started by ${paperWeekday(board.startBy)}`}.
      </p>
    </>
  );
}
