import type { Migration } from '../migrations.js';

/** A sum over each row of what can't be made anew, so that a byte that the disk has changed is noticed; null for older rows and for words that are gone. */
export const sums: Migration = {
  number: 7,
  name: 'sums',
  async up({ schema }) {
    for (const table of ['event', 'said', 'sealed', 'evidence'] as const)
      await schema.alterTable(table).addColumn('sum', 'bigint').execute();
  },
};
