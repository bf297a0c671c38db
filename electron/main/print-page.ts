import { writeFile } from 'node:fs/promises';

import type { BrowserWindow, Dialog } from 'electron';

/** The shell's own print dialog; the page's sheet sets size and margins. */
export function printPage({ webContents }: BrowserWindow): void {
  webContents.print({ printBackground: true, usePrinterDefaultPageSize: true });
}

/** Prints the page into a file. Answers why that failed, where it did. */
export async function printToFile(
  window: BrowserWindow,
  dialog: Pick<Dialog, 'showSaveDialog'>,
): Promise<string | undefined> {
  const filters = [{ name: 'PDF', extensions: ['pdf'] }];
  const chosen = await dialog.showSaveDialog(window, {
    title: 'Print to a file',
    defaultPath: 'Loamwright.pdf',
    filters,
  });
  if (chosen.canceled || chosen.filePath === '') return undefined;
  try {
    const paper = await window.webContents.printToPDF({ printBackground: true, preferCSSPageSize: true });
    await writeFile(chosen.filePath, paper);
    return undefined;
  } catch (error) {
    return `${chosen.filePath} could not be written (${error instanceof Error ? error.message : String(error)}).`;
  }
}
