import { bothSexesChance } from '#shared-calc/trade/cultures/both-sexes-chance.ts';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';

/** The animals a tub is started from; for two sexes, the chance that both are among them. */
export function Founders({
  board: { kind, founders },
  decimalComma,
}: {
  readonly board: CultureBoard;
  readonly decimalComma: boolean;
}) {
  const write = (figure: number) => writeNumber(figure, 0, { decimalComma });
  const chance = bothSexesChance.compute([founders, 0.5, 0.8]);
  const sexes =
    kind.breeding === 'females only'
      ? 'Females only: a split of a standing tub, no males wanted.'
      : `A new line of ${write(founders)}: ${typeof chance === 'number' ? writeNumber(chance * 100, 1, { decimalComma }) : ''} % sure of both sexes, half of them males and four in five living on.`;
  return (
    <section>
      <h2>Started from</h2>
      <p>
        {kind.breeding === 'females only'
          ? `${write(kind.founders)} animals. `
          : `${write(kind.founders)} split off a standing tub. `}
        {sexes}
      </p>
      <MutedLine>
        First harvest after {kind.firstHarvestDays} days, then every {kind.harvestEveryDays}; a harvest gives{' '}
        {write(kind.yield)}. Keep it at {kind.lowestC} to {kind.highestC}&nbsp;°C. {kind.note.replaceAll('degC', '°C')}
      </MutedLine>
    </section>
  );
}
