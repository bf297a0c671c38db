/**
 * The digest of the schema of a new book. A book that has it needs no second book beside it to be compared with, which
 * is a seventh of the start of a command. A test says what it must be after a new migration.
 */
export const newestSchema = '2d94e54cd35dc5f6630719a03658093659e77a4624749ac35ecf7de48e060cf1';
