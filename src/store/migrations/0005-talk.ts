import type { Migration } from '../migrations.js';

/** Which practice a message on its way belongs to, so that its talk is found on the platform. */
export const talk: Migration = {
  number: 5,
  name: 'talk',
  async up({ schema }) {
    await schema.alterTable('outbox').addColumn('practice', 'text').execute();
    await schema
      .createIndex('outbox_practice')
      .on('outbox')
      .columns(['class_id', 'practice', 'seq'])
      .execute();
  },
};
