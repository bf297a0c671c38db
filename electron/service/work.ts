/** Long work in pieces of some milliseconds. */
export type Work<T> = Generator<undefined, T>;
