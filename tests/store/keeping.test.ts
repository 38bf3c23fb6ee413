import { sql, type Kysely } from 'kysely';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';
import { keeping, type KeptTable } from '../../shared/keeping.js';
import { sqliteDisk } from '../../src/store/disk.js';
import { erasePerson } from '../../src/store/erase-person.js';
import { noList } from '../../src/store/erased-list.js';
import { exportPerson } from '../../src/store/export-person.js';
import { migrate } from '../../src/store/migrations.js';
import { openMemory, type Opened } from '../../src/store/open-database.js';
import type { Tables } from '../../src/store/tables.js';

const oak = asId<ClassId>('oak');
const wren = asId<PersonId>('p-wren');
const other = asId<PersonId>('p-other');

const named = keeping.flatMap(({ tables }) => Object.entries(tables));
/** Columns that hold secrets or JSON, and what a row of a test has in them. */
const special = (table: string, column: string, person: string): unknown => {
  const mark = `${table}-${column}-of-${person}`;
  const values: Readonly<Record<string, unknown>> = {
    class_id: 'oak',
    audience_to: 'person',
    what: table === 'about' ? 'reply' : 'words',
    ref: `oak/${mark}`,
    look: null,
    gone: null,
    about: null,
    reply: JSON.stringify({ done: true, messages: [] }),
    message: JSON.stringify({ audience: { to: 'person', person }, summary: mark, blocks: [] }),
    body: JSON.stringify({ key: mark }),
  };
  return column in values ? values[column] : mark;
};

async function addRow(db: Kysely<Tables>, table: string, kept: KeptTable, person: string): Promise<void> {
  const columns = (await db.introspection.getTables()).find(({ name }) => name === table)?.columns ?? [];
  const values = columns.map(({ name, dataType }) => {
    if (name === kept.person) return person;
    if (name === 'sum') return null;
    return /int/iu.test(dataType) ? (name === 'version' ? person.length : 5) : special(table, name, person);
  });
  const names = sql.join(columns.map(({ name }) => sql.ref(name)));
  await sql`insert into ${sql.table(table)} (${names}) values (${sql.join(values)})`.execute(db);
}

describe('The table of what is kept', () => {
  let opened: Opened;
  beforeAll(async () => {
    opened = openMemory();
    await migrate(opened.db, () => 0);
    for (const [table, kept] of named) {
      if (kept.person === null) continue;
      for (const person of [wren, other]) await addRow(opened.db, table, kept, person);
    }
  });
  afterAll(() => opened.db.destroy());

  it('names every table and every column of the database, and none that isn’t there', async () => {
    const tables = await opened.db.introspection.getTables();
    const there = tables.flatMap(({ name, columns }) => columns.map((column) => `${name}.${column.name}`));
    const told = named.flatMap(([table, { columns }]) => columns.map((column) => `${table}.${column}`));
    expect(told.toSorted()).toEqual(there.toSorted());
  });

  it('says of every table with a person which column names them', async () => {
    for (const { name, columns } of await opened.db.introspection.getTables()) {
      const persons = columns.filter((column) => /person/u.test(column.name)).map((column) => column.name);
      for (const column of persons)
        expect([name, column]).toEqual([name, named.find(([table]) => table === name)?.[1].person]);
    }
  });

  it('says truly what an export gives: something of each such table, no secret, and nothing of anybody else', async () => {
    const held = JSON.stringify(await exportPerson(opened.db, oak, wren));
    for (const [table, { person, exported }] of named) {
      if (person === null) continue;
      const given =
        table === 'slip' || table === 'session'
          ? new RegExp(`"${table}s":\\[\\{`, 'u').test(held)
          : held.includes(`${table}-`);
      expect([table, given]).toEqual([table, exported === true || table === 'sealed']);
    }
    expect(held).not.toContain(other);
    expect(held).not.toMatch(/hash-of|slip-hash|session-id|sealed-text/u);
  });

  it('has nothing of an erased person in any table, but that they were erased', async () => {
    await erasePerson(
      { db: opened.db, disk: sqliteDisk(opened.db, opened.raw), list: noList, now: 9 },
      oak,
      wren,
    );
    const left = [];
    for (const [table] of named) {
      const { rows } = await sql`select * from ${sql.table(table)}`.execute(opened.db);
      const text = JSON.stringify(rows);
      if (text.includes(`-of-${wren}`) || (text.includes(`"${wren}"`) && table !== 'erasure'))
        left.push(table);
      if (table !== 'erasure' && named.find(([name]) => name === table)?.[1].person)
        expect([table, text]).toEqual([table, expect.stringContaining(other)]);
    }
    // A look that an adult took stays with the words that were looked at; the row of a text says whose it was and that it is gone.
    expect(left).toEqual(['said', 'sealed_look']);
  });
});
