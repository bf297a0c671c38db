import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';

const bundle = fileURLToPath(new URL('../ag-grid-community.min.js', import.meta.resolve('ag-grid-community')));

/** Rows and columns of the page that the bare grid stands beside. */
export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/**
 * The grid's library alone in a page, with texts, in a window like ours: `x` writes twelve cells of one column in
 * sight.
 */
export async function openBareGrid(browser: Browser, { rows, columns }: GridSize): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.setContent('<!doctype html><style>html,body,#host{height:100%;margin:0}</style><div id="host"></div>');
  await page.addScriptTag({ content: readFileSync(bundle, 'utf8') });
  await page.evaluate(
    ([rowCount, columnCount]) => {
      interface Library {
        readonly createGrid: (
          host: Element | null,
          options: object,
        ) => { readonly getDisplayedRowAtIndex: (at: number) => { setDataValue: (key: string, to: string) => void } };
      }
      const { agGrid } = window as unknown as { readonly agGrid: Library };
      const keys = Array.from({ length: columnCount }, (_, at) => `c${at}`);
      const rowData = Array.from({ length: rowCount }, (_, row) =>
        Object.fromEntries(keys.map((key, at) => [key, String(row * at)])),
      );
      const api = agGrid.createGrid(document.querySelector('#host'), {
        columnDefs: keys.map((field) => ({ field, width: 100 })),
        rowData,
        animateRows: false,
      });
      let turn = 0;
      window.addEventListener('keydown', ({ key }) => {
        if (key !== 'x') return;
        turn += 1;
        for (let row = 0; row < 12; row += 1)
          api.getDisplayedRowAtIndex(row).setDataValue('c3', String(100 + turn + row));
      });
    },
    [rows, columns] as const,
  );
  await page.locator('[role="gridcell"]').first().click();
  await page.waitForTimeout(500);
  return page;
}
