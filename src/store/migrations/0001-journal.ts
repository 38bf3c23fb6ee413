import type { Migration } from '../migrations.js';

/** The journal, what was said, the doors in and out, and what is read without it. */
export const journal: Migration = {
  number: 1,
  name: 'journal',
  async up(db) {
    const { schema } = db;
    await schema
      .createTable('note')
      .addColumn('name', 'text', (c) => c.primaryKey())
      .addColumn('value', 'text', (c) => c.notNull())
      .execute();
    await schema
      .createTable('counter')
      .addColumn('name', 'text', (c) => c.primaryKey())
      .addColumn('value', 'bigint', (c) => c.notNull())
      .execute();
    await db.insertInto('counter').values({ name: 'seq', value: 0 }).execute();
    await schema
      .createTable('class')
      .addColumn('class_id', 'text', (c) => c.primaryKey())
      .addColumn('version', 'bigint', (c) => c.notNull())
      .addColumn('due_at', 'bigint')
      .execute();
    await schema.createIndex('class_due').on('class').column('due_at').execute();
    await schema
      .createTable('event')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('version', 'bigint', (c) => c.notNull())
      .addColumn('type', 'text', (c) => c.notNull())
      .addColumn('form', 'integer', (c) => c.notNull())
      .addColumn('at', 'bigint', (c) => c.notNull())
      .addColumn('body', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('event_key', ['class_id', 'version'])
      .execute();
    await schema
      .createTable('inbox')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('update_id', 'text', (c) => c.notNull())
      .addColumn('at', 'bigint', (c) => c.notNull())
      .addColumn('reply', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('inbox_key', ['class_id', 'update_id'])
      .execute();
    await schema
      .createTable('evidence')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('key', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addColumn('group_id', 'text', (c) => c.notNull())
      .addColumn('passage', 'text')
      .addColumn('at', 'bigint', (c) => c.notNull())
      .addColumn('body', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('evidence_row_key', ['class_id', 'key'])
      .execute();
    await schema.createIndex('evidence_at').on('evidence').columns(['class_id', 'at']).execute();
  },
};
