/**
 * The digest of the schema of a new book. A book that has it needs no second book beside it to be compared with, which
 * is a seventh of the start of a command. A test says what it must be after a new migration.
 */
export const newestSchema = 'f53ea7550efd0d8a2477cc32cea803295c7006c9aa09c50674049a8ad7ac2330';
