import { describe, expect, it } from 'vitest';
import { migrate, migrations, type Migration } from '../../src/store/migrations.js';
import { openMemory } from '../../src/store/open-database.js';

describe('Migrations', () => {
  it('are numbered without a gap', () => {
    expect(migrations.map(({ number }) => number)).toEqual(migrations.map((_, at) => at + 1));
  });

  it('run once each, in order, and only what is missing', async () => {
    const { db } = openMemory();
    const ran: number[] = [];
    const step = (number: number): Migration => ({
      number,
      name: `step ${number}`,
      up: async () => void ran.push(number),
    });
    await migrate(db, () => 5, [step(1)]);
    await migrate(db, () => 6, [step(1), step(2), step(3)]);
    await migrate(db, () => 7, [step(1), step(2), step(3)]);
    expect(ran).toEqual([1, 2, 3]);
    expect(await db.selectFrom('migration').select(['number', 'at']).execute()).toEqual([
      { number: 1, at: 5 },
      { number: 2, at: 6 },
      { number: 3, at: 6 },
    ]);
    await db.destroy();
  });

  it('leave nothing of a step that fails', async () => {
    const { db } = openMemory();
    const failing: Migration = {
      number: 1,
      name: 'failing',
      up: async (tx) => {
        await tx.schema.createTable('half').addColumn('a', 'text').execute();
        throw new Error('no further');
      },
    };
    await expect(migrate(db, () => 5, [failing])).rejects.toThrow('no further');
    expect((await db.introspection.getTables()).map(({ name }) => name)).toEqual(['migration']);
    await db.destroy();
  });
});
