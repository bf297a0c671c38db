import { Radio } from '#renderer/kit/checkbox.tsx';
import type { CultureBoard } from '#shared-calc/prepare/culture-board.ts';
import { isFlies } from '#shared-calc/prepare/culture-demands.ts';
import { MALE_SHARE, SURVIVE_SHARE, tubWays } from '#shared-calc/prepare/tub-ways.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { bothSexesChance } from '#shared-calc/trade/cultures/both-sexes-chance.ts';
import type { CultureState } from './culture-state.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';

interface FoundersParts {
  readonly board: CultureBoard;
  readonly state: CultureState;
  readonly decimalComma: boolean;
}

const wayWords = { split: 'Split a standing tub', new: 'A new line' } as const;

/** The animals a new tub is started from; for two sexes, the chance that both are among them. */
export function Founders({ board, state, decimalComma }: FoundersParts) {
  const { kind, founders, way } = board;
  const write = (figure: number) => writeNumber(figure, 0, { decimalComma });
  return (
    <section>
      <h2>Started from</h2>
      {!isFlies(kind) &&
        tubWays.map((each) => (
          <Radio
            key={each}
            name="way"
            label={wayWords[each]}
            on={each === way}
            choose={() => (state.way.value = each)}
          />
        ))}
      <p>
        {write(founders)} animals. {way === 'new' && sexesOf(board, decimalComma)}
      </p>
      <MutedLine>
        {harvestWords(kind, decimalComma)} Keep it at {kind.lowestC} to {kind.highestC}&nbsp;°C.{' '}
        {kind.note.replaceAll('degC', '°C')}
      </MutedLine>
    </section>
  );
}

function sexesOf({ kind, founders }: CultureBoard, decimalComma: boolean): string {
  if (kind.breeding === 'females only') return 'Females only: no males wanted.';
  const chance = bothSexesChance.compute([founders, MALE_SHARE, SURVIVE_SHARE]);
  const percent = typeof chance === 'number' ? writeNumber(chance * 100, 1, { decimalComma }) : '';
  return `${percent} % sure of both sexes, half of them males and four in five living on.`;
}

function harvestWords(kind: CultureKind, decimalComma: boolean): string {
  const first = `First harvest after ${kind.firstHarvestDays} days`;
  if (isFlies(kind)) return `${first}, for ${kind.productiveDays ?? 0} days.`;
  const share = `${writeNumber(kind.harvestShare * 100, 0, { decimalComma })} %`;
  const every = `${kind.harvestEveryDays} days`;
  return kind.taken === 'floated'
    ? `${first}; ${share} of a tub is floated at once, once in ${every}.`
    : `${first}; up to ${share} of a tub is picked in ${every}.`;
}
