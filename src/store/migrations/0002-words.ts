import type { Migration } from '../migrations.js';

/** What people said, apart from the journal, so that it can go by itself; and whom it concerns. */
export const words: Migration = {
  number: 2,
  name: 'words',
  async up({ schema }) {
    await schema
      .createTable('said')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('version', 'bigint', (c) => c.notNull())
      .addColumn('n', 'integer', (c) => c.notNull())
      .addColumn('what', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addColumn('about', 'text')
      .addColumn('at', 'bigint', (c) => c.notNull())
      .addColumn('text', 'text')
      .addColumn('gone', 'text')
      .addPrimaryKeyConstraint('said_key', ['class_id', 'version', 'n'])
      .execute();
    await schema
      .createTable('sealed')
      .addColumn('ref', 'text', (c) => c.primaryKey())
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addColumn('at', 'bigint', (c) => c.notNull())
      .addColumn('text', 'text', (c) => c.notNull())
      .execute();
    await schema
      .createTable('sealed_look')
      .addColumn('ref', 'text', (c) => c.notNull())
      .addColumn('by_person', 'text', (c) => c.notNull())
      .addColumn('at', 'bigint', (c) => c.notNull())
      .execute();
    await schema.createIndex('sealed_look_ref').on('sealed_look').column('ref').execute();
    await schema
      .createTable('post')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('post', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('post_key', ['class_id', 'post'])
      .execute();
    await schema
      .createTable('about')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('what', 'text', (c) => c.notNull())
      .addColumn('key', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('about_key', ['class_id', 'what', 'key', 'person'])
      .execute();
    await schema
      .createTable('erasure')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addColumn('asked_at', 'bigint', (c) => c.notNull())
      .addColumn('done_at', 'bigint')
      .addPrimaryKeyConstraint('erasure_key', ['class_id', 'person'])
      .execute();
  },
};
