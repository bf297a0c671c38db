import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { CodedName } from '#renderer/kit/coded-name.tsx';
import { goodsWords, packsWords } from '#shared-calc/quantity/goods-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { goTo } from '#renderer/frame/go-to.ts';
import type { ChosenMaterial } from '#shared-calc/buy/chosen-packs.ts';

interface NeedsParts {
  /** For screen readers. */
  readonly label: string;
  readonly needs: readonly ChosenMaterial[];
  readonly chosen: string | undefined;
  readonly context: BookContext;
}

/** Materials of the run with the packs they are bought in. */
export function RunNeeds({ label, needs, chosen, context: { records, workshop, display } }: NeedsParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  const amount = (value: number, { unit }: ChosenMaterial) => (value > 1e-9 ? goodsWords(value, unit, display) : '');
  return (
    <Table
      look="ledger"
      label={label}
      rows={needs}
      keyOf={({ material }) => material}
      menu={({ material, label: name }) => ({
        label: `${material} ${name}`,
        acts: [
          goTo('Choose its packs', 'run', material),
          ...(records.material.has(material) ? [goTo('In the material book', 'material-book', material)] : []),
          goTo('In the Store', 'store', material),
        ],
      })}
      mark={({ material }) => (material === chosen ? 'here' : undefined)}
      columns={[
        { head: 'Material', names: true, cell: (need) => <Material need={need} isChosen={need.material === chosen} /> },
        { head: 'Needed', figure: true, cell: (need) => amount(need.used, need) },
        { head: 'On hand', figure: true, cell: (need) => amount(need.onHand, need) },
        { head: 'Buy', cell: (need) => buyWords(need, display) },
        { head: 'Together', figure: true, cell: (need) => (need.lacks ? '' : money(need.costCoins)) },
        { head: 'Alone', figure: true, cell: (need) => (need.lacks ? '' : money(need.aloneCoins)) },
        { head: 'Left in the store', figure: true, cell: (need) => (need.lacks ? '' : amount(need.leftOver, need)) },
      ]}
    />
  );
}

function Material({ need, isChosen }: { readonly need: ChosenMaterial; readonly isChosen: boolean }) {
  return (
    <>
      <Link look="row" href={writeRoute('run', need.material)} open={isChosen}>
        <CodedName code={need.material} label={need.label} />
      </Link>
      {need.oldPrice && (
        <Flag state="old" sign="old" after>
          old price
        </Flag>
      )}
      {need.guess && (
        <Flag state="needs" sign="need" after>
          a guess
        </Flag>
      )}
    </>
  );
}

function buyWords(need: ChosenMaterial, display: BookContext['display']): string {
  if (need.lacks) return goodsWords(need.toBuy, need.unit, display);
  const coming = need.coming > 0 ? goodsWords(need.coming, need.unit, display) : '';
  const nothing = coming === '' ? 'nothing: the store has it' : 'nothing';
  const packs = `${packsWords(need, display) || nothing}${coming === '' ? '' : `; ${coming} ordered`}`;
  const short = need.short > 0 ? `; ${goodsWords(need.short, need.unit, display)} short` : '';
  return `${packs}${need.byHand ? ', by hand' : ''}${short}`;
}
