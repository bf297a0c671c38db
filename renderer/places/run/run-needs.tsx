import type { BookContext } from '#renderer/books/book-hands.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { goodsWords, packsWords } from '#shared-calc/quantity/goods-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import type { ChosenMaterial } from '#shared-calc/buy/chosen-packs.ts';

interface NeedsParts {
  readonly needs: readonly ChosenMaterial[];
  readonly chosen: string | undefined;
  readonly context: BookContext;
}

const heads = [
  ['Material', ''],
  ['Needed', 'n'],
  ['On hand', 'n'],
  ['Buy', ''],
  ['Together', 'n'],
  ['Alone', 'n'],
  ['Left in the store', 'n'],
] as const;

/** Materials of the run with what they are bought in. */
export function RunNeeds({ needs, chosen, context }: NeedsParts) {
  return (
    <table class="ledger">
      <thead>
        <tr>
          {heads.map(([title, look]) => (
            <th key={title} scope="col" class={look}>
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {needs.map((need) => (
          <Need key={need.material} need={need} isChosen={need.material === chosen} context={context} />
        ))}
      </tbody>
    </table>
  );
}

interface NeedParts {
  readonly need: ChosenMaterial;
  readonly isChosen: boolean;
  readonly context: BookContext;
}

function Need({ need, isChosen, context: { workshop, display } }: NeedParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  const amount = (value: number) => (value > 1e-9 ? goodsWords(value, need.unit, display) : '');
  return (
    <tr class={isChosen ? 'here' : undefined}>
      <th scope="row">
        <a class="row-link" href={writeRoute('run', need.material)} aria-current={isChosen ? 'true' : undefined}>
          <span class="code">{need.material}</span> {need.label}
        </a>
        {need.oldPrice && (
          <Flag state="old" sign="old" after>
            old price
          </Flag>
        )}
      </th>
      <td class="n">{amount(need.used)}</td>
      <td class="n">{amount(need.onHand)}</td>
      <td>{buyWords(need, display)}</td>
      <td class="n">{money(need.costCoins)}</td>
      <td class="n">{money(need.aloneCoins)}</td>
      <td class="n">{amount(need.leftOver)}</td>
    </tr>
  );
}

function buyWords(need: ChosenMaterial, display: BookContext['display']): string {
  const packs = packsWords(need, display) || 'nothing: the store has it';
  const short = need.short > 0 ? `; ${goodsWords(need.short, need.unit, display)} short` : '';
  return `${packs}${need.byHand ? ', by hand' : ''}${short}`;
}
