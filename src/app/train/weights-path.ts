import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Path of a weights file in the sources, where the build takes it from. */
export function weightsPath(name: string, room: 'judging' | 'text' | 'safety' = 'judging'): string {
  const root = join(
    dirname(createRequire(import.meta.url).resolve('#fixtures/sets/questions/open.jsonl')),
    '../../..',
  );
  return join(root, 'src', room, 'weights', `${name}.json`);
}
