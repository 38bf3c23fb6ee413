import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { memoryStore } from '../../src/store/memory-store.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { storeContract } from './store-contract.js';

const base = mkdtempSync(join(tmpdir(), 'store-contract-'));
let folders = 0;
afterAll(() => rmSync(base, { recursive: true, force: true }));

storeContract('A store in memory', () => memoryStore());
storeContract('A store in a folder', () => openSqliteStore(join(base, String((folders += 1)))));
