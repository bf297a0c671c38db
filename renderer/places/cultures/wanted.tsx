import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { KindDemands } from '#shared-calc/derive/kind-demands.ts';

interface WantedParts {
  readonly board: CultureBoard;
  readonly demands: KindDemands;
  readonly decimalComma: boolean;
}

/** What the builds ask for, from which tub, and how many to keep. */
export function Wanted({ board, demands: { demands }, decimalComma }: WantedParts) {
  const write = (figure: number) => writeNumber(figure, 0, { decimalComma });
  if (demands.length === 0) return <EmptyNote>No job that is paid and still to be built asks for it.</EmptyNote>;
  const harvestsOn = (date: string) => board.harvests.filter((harvest) => harvest.date === date).map(({ tub }) => tub);
  return (
    <>
      <table class="told acts">
        <caption>What the builds ask for</caption>
        <thead>
          <tr>
            <th scope="col">Build</th>
            <th scope="col">Job</th>
            <th scope="col" class="n">
              Animals
            </th>
            <th scope="col" class="n">
              From tub
            </th>
          </tr>
        </thead>
        <tbody>
          {demands.map(({ job, title, date, animals }) => (
            <tr key={job}>
              <td>{paperWeekday(date)}</td>
              <th scope="row">
                {job} {title}
              </th>
              <td class="n">{write(animals)}</td>
              <td class="n">{harvestsOn(date).join(', ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="counted">
        Keep {board.tubs} {board.tubs === 1 ? 'tub' : 'tubs'} and {board.spare} spare
        {board.startBy !== undefined && `, the first started by ${paperWeekday(board.startBy)}`}.
      </p>
    </>
  );
}
