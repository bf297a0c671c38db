import { useMemo } from 'preact/hooks';
import { Curve } from '#renderer/curves/curve.tsx';
import { priceSpec } from '#renderer/curves/price-spec.ts';
import { useOpenSheet } from '#renderer/frame/use-open-sheet.ts';
import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { Button } from '#renderer/kit/button.tsx';
import type { PageStore } from '#renderer/store/page-store.ts';
import { pricedSizes } from './priced-sizes.ts';

/** Price against size over the sizes on the bench, as a picture and as a table. */
export function PriceBySize({ store: { bench, sheet: open } }: { readonly store: PageStore }) {
  const sheet = useOpenSheet();
  const laid = bench.laid.value;
  const version = laid?.worked.version.value;
  const display = bench.display.value;
  const { moneyDecimals = 2, decimalComma = false, currency } = display;
  const spec = useMemo(() => {
    const words = { unit: shownUnitWords('L', display), currency, moneyDecimals, decimalComma };
    return laid && priceSpec(pricedSizes(laid.worked, display), words);
  }, [laid, version, display]);
  return (
    <dialog ref={sheet} class="sheet wide" aria-label="Price by size" onClose={() => (open.value = undefined)}>
      {spec ? (
        <Curve spec={spec} decimalComma={decimalComma} />
      ) : (
        <p>Two sizes with a price are needed. Take another size, or look at what a size still needs at its foot.</p>
      )}
      <form method="dialog">
        <Button look="main" type="submit" autoFocus>
          Close
        </Button>
      </form>
    </dialog>
  );
}
