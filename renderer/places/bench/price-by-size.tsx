import { useMemo } from 'preact/hooks';
import { Curve } from '#renderer/curves/curve.tsx';
import { priceSpec } from '#renderer/curves/price-spec.ts';
import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog } from '#renderer/kit/dialog.tsx';
import type { PageStore } from '#renderer/store/page-store.ts';
import { pricedSizes } from './priced-sizes.ts';

/** Price against size over the sizes on the bench, as a chart and as a table. */
export function PriceBySize({ store: { bench, dialog: open } }: { readonly store: PageStore }) {
  const opened = bench.opened.value;
  const version = opened?.worked.version.value;
  const display = bench.display.value;
  const { moneyDecimals = 2, decimalComma = false, currency } = display;
  const spec = useMemo(() => {
    const words = { unit: shownUnitWords('L', display), currency, moneyDecimals, decimalComma };
    return opened && priceSpec(pricedSizes(opened.worked, display), words);
  }, [opened, version, display]);
  return (
    <Dialog title="Price by size" titled wide close={() => (open.value = undefined)}>
      {(leave) => (
        <>
          {spec ? (
            <Curve spec={spec} decimalComma={decimalComma} />
          ) : (
            <p>Two sizes with a price are needed. Take another size, or look at what a size still needs at its foot.</p>
          )}
          <Buttons>
            <Button look="main" autoFocus onClick={leave}>
              Close
            </Button>
          </Buttons>
        </>
      )}
    </Dialog>
  );
}
