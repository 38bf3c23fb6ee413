import type { Migration } from '../migrations.js';

/** Who comes in how: people of platforms, slips and links by their hash, signed-in browsers. */
export const doors: Migration = {
  number: 4,
  name: 'doors',
  async up({ schema }) {
    await schema
      .createTable('identity')
      .addColumn('channel', 'text', (c) => c.notNull())
      .addColumn('tenant', 'text', (c) => c.notNull())
      .addColumn('user_id', 'text', (c) => c.notNull())
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('identity_key', ['channel', 'tenant', 'user_id'])
      .execute();
    await schema
      .createTable('slip')
      .addColumn('hash', 'text', (c) => c.primaryKey())
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addColumn('made_at', 'bigint', (c) => c.notNull())
      .addColumn('expires_at', 'bigint', (c) => c.notNull())
      .addColumn('revoked', 'integer', (c) => c.notNull())
      .execute();
    await schema.createIndex('slip_person').on('slip').columns(['class_id', 'person']).execute();
    await schema
      .createTable('session')
      .addColumn('id', 'text', (c) => c.primaryKey())
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('person', 'text', (c) => c.notNull())
      .addColumn('started_at', 'bigint', (c) => c.notNull())
      .addColumn('seen_at', 'bigint', (c) => c.notNull())
      .addColumn('expires_at', 'bigint', (c) => c.notNull())
      .execute();
    await schema.createIndex('session_person').on('session').columns(['class_id', 'person']).execute();
  },
};
