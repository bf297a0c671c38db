import { writeFile } from 'node:fs/promises';
import { app, type BrowserWindow, type Dialog, type PrintToPDFOptions } from 'electron';
import { safeName } from '#electron/service/safe-name.ts';
import { actNames } from '#shared-calc/words/act-names.ts';

/** Opens the system's print dialog; the page's print style sets size and margins. */
export function printPage({ webContents }: Pick<BrowserWindow, 'webContents'>): void {
  webContents.print({ printBackground: true, usePrinterDefaultPageSize: true });
}

/** Countries whose letters are written on Letter, ISO 3166; all others use A4. */
const letterCountries = new Set(['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'VE', 'CR', 'GT', 'SV', 'NI', 'PA', 'DO', 'PR']);

/** The page's own size, which is the workshop's paper; while none is chosen, that of the country. */
export function pdfOptions(country: string): PrintToPDFOptions {
  return {
    printBackground: true,
    preferCSSPageSize: true,
    pageSize: letterCountries.has(country) ? 'Letter' : 'A4',
    generateTaggedPDF: true,
  };
}

/** The file of a paper bears the page's title: `Quote Q-0007, revision A, J07 Weir Hotel.pdf`. */
export function pdfName(title: string): string {
  const name = safeName(
    title
      .replace(/, Loamwright$/, '')
      .replaceAll(/[,;:]/g, '')
      .replaceAll(/\s+/g, ' '),
  );
  return `${name === '' ? 'Loamwright' : name}.pdf`;
}

/** Prints the page to a PDF file. Returns a sentence if that failed. */
export async function printToFile(
  window: BrowserWindow,
  save: Pick<Dialog, 'showSaveDialog'>,
): Promise<string | undefined> {
  const { webContents } = window;
  const chosen = await save.showSaveDialog(window, {
    title: actNames.savePdf,
    defaultPath: pdfName(webContents.getTitle()),
    filters: [{ name: 'PDF', extensions: ['pdf'] }],
  });
  if (chosen.canceled || chosen.filePath === '') return undefined;
  try {
    await writeFile(chosen.filePath, await webContents.printToPDF(pdfOptions(app.getLocaleCountryCode())));
    return undefined;
  } catch (error) {
    return `${chosen.filePath} could not be written (${error instanceof Error ? error.message : String(error)}).`;
  }
}
