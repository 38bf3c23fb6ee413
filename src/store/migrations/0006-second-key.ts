import type { Migration } from '../migrations.js';

/** What is asked for beside a slip: a pupil's pictures or an adult's passphrase, hashed. */
export const secondKeys: Migration = {
  number: 6,
  name: 'second keys',
  async up({ schema }) {
    await schema
      .createTable('second_key')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addColumn('kind', 'text', (c) => c.notNull())
      .addColumn('hash', 'text', (c) => c.notNull())
      .addColumn('misses', 'integer', (c) => c.notNull())
      .addColumn('missed_at', 'bigint')
      .addPrimaryKeyConstraint('second_key_key', ['class_id', 'person'])
      .execute();
  },
};
