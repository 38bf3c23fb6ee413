import type { Migration } from '../migrations.js';

/** What is shown, what waits to be sent, and where to. */
export const messages: Migration = {
  number: 3,
  name: 'messages',
  async up({ schema }) {
    await schema
      .createTable('shown')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('key', 'text', (c) => c.notNull())
      .addColumn('seq', 'bigint', (c) => c.notNull())
      .addColumn('audience_to', 'text', (c) => c.notNull())
      .addColumn('audience_id', 'text', (c) => c.notNull())
      .addColumn('at', 'bigint', (c) => c.notNull())
      .addColumn('message', 'text')
      .addColumn('look', 'text')
      .addPrimaryKeyConstraint('shown_key', ['class_id', 'key'])
      .execute();
    await schema
      .createIndex('shown_audience')
      .on('shown')
      .columns(['class_id', 'audience_to', 'audience_id', 'seq'])
      .execute();
    await schema
      .createTable('outbox')
      .addColumn('key', 'text', (c) => c.primaryKey())
      .addColumn('seq', 'bigint', (c) => c.notNull())
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('message_key', 'text', (c) => c.notNull())
      .addColumn('channel', 'text', (c) => c.notNull())
      .addColumn('tenant', 'text', (c) => c.notNull())
      .addColumn('room', 'text', (c) => c.notNull())
      .addColumn('does', 'text', (c) => c.notNull())
      .addColumn('state', 'text', (c) => c.notNull())
      .addColumn('at', 'bigint', (c) => c.notNull())
      .addColumn('telling', 'text')
      .addColumn('sending_at', 'bigint')
      .addColumn('platform_id', 'text')
      .addColumn('why', 'text')
      .execute();
    await schema
      .createIndex('outbox_message')
      .on('outbox')
      .columns(['class_id', 'message_key', 'seq'])
      .execute();
    await schema.createIndex('outbox_state').on('outbox').columns(['channel', 'state', 'seq']).execute();
    await schema
      .createTable('place')
      .addColumn('class_id', 'text', (c) => c.notNull())
      .addColumn('channel', 'text', (c) => c.notNull())
      .addColumn('tenant', 'text', (c) => c.notNull())
      .addColumn('room', 'text', (c) => c.notNull())
      .addColumn('audience_to', 'text', (c) => c.notNull())
      .addColumn('audience_id', 'text', (c) => c.notNull())
      .addPrimaryKeyConstraint('place_key', ['channel', 'tenant', 'room'])
      .execute();
    await schema.createIndex('place_class').on('place').column('class_id').execute();
  },
};
