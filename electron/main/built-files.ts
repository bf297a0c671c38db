import { fileURLToPath } from 'node:url';

// Two folders up from the source and from the built file alike lies the project, or the packed program.
export const pageFolder: string = fileURLToPath(new URL('../../renderer/dist/', import.meta.url));
export const preloadFile: string = fileURLToPath(new URL('../../electron/dist/preload.cjs', import.meta.url));
