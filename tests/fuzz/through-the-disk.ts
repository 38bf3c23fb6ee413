import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import type { ClassEvent } from '../../shared/events.js';
import type { ClassId } from '../../shared/ids.js';
import { databaseFile } from '../../src/store/open-database.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import type { Store } from '../../src/store/store.js';
import { openPlayed, playClass, writeAll } from '../support/played-class.js';
import type { Chance } from './chance.js';
import { must, mustBeClear, type Entrance } from './entrance.js';

/** A sound data folder, what is read from it, and a folder to be damaged. */
interface Folders {
  readonly base: string;
  readonly bytes: Buffer;
  readonly damaged: string;
  readonly classId: ClassId;
  readonly events: readonly ClassEvent[];
}

async function makeFolders(): Promise<Folders> {
  const base = mkdtempSync(join(tmpdir(), 'turnstone-fuzz-'));
  const sound = join(base, 'sound');
  const played = await openPlayed((now) => openSqliteStore(sound, { now }));
  const one = await playClass(played);
  await writeAll(played, one);
  const events = await played.store.events(one.classId);
  await played.store.sweep();
  await played.store.close();
  const damaged = join(base, 'damaged');
  await (await openSqliteStore(damaged)).close();
  return { base, bytes: readFileSync(databaseFile(sound)), damaged, classId: one.classId, events };
}

/** Changes one byte, or cuts the file off, or blanks a stretch of it. */
function damage(chance: Chance, bytes: Buffer): { readonly what: string; readonly bytes: Buffer } {
  const copy = Buffer.from(bytes);
  const at = chance.int(copy.length);
  if (chance.oneIn(30)) return { what: `cut off at ${at}`, bytes: copy.subarray(0, at) };
  if (chance.oneIn(30))
    return { what: `blank from ${at}`, bytes: copy.fill(0, at, Math.min(at + 4096, copy.length)) };
  const bit = chance.oneIn(2) ? 1 << chance.int(8) : 1 + chance.int(255);
  copy[at] = (copy[at] ?? 0) ^ bit;
  return { what: `byte ${at} with ${bit}`, bytes: copy };
}

async function readAll(store: Store, { classId, events }: Folders): Promise<void> {
  const read = await store.events(classId);
  must(isDeepStrictEqual(read, events), 'a wrong journal was read as if it were right');
  const [person] = events.flatMap((event) => (event.type === 'person-added' ? [event.person] : []));
  if (person !== undefined) await store.exportPerson(classId, person);
  await store.evidence({ classId });
  await store.shown(classId, { to: 'staff', group: null });
}

/** A data folder in which something has changed by itself: opening it gives a fault that says what to do, or all is read as it was. */
export const throughTheDisk: readonly Entrance[] = [
  {
    name: 'a damaged data folder',
    share: 2,
    async open(chance) {
      const folders = await makeFolders();
      const file = databaseFile(folders.damaged);
      return {
        next() {
          const { what, bytes } = damage(chance, folders.bytes);
          return {
            shown: what,
            run: async () => {
              for (const end of ['-wal', '-shm', '-journal']) rmSync(`${file}${end}`, { force: true });
              writeFileSync(file, bytes);
              let store: Store | null = null;
              try {
                store = await openSqliteStore(folders.damaged);
                await readAll(store, folders);
              } catch (why) {
                mustBeClear(why);
              } finally {
                await store?.close();
              }
            },
          };
        },
        close: async () => rmSync(folders.base, { recursive: true, force: true }),
      };
    },
  },
];
