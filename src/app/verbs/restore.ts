import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { erasedList } from '../../store/erased-list.js';
import { restoreStore } from '../../store/restore.js';
import { mustMove, whoErases } from '../founding.js';
import type { Io, Verb } from '../io.js';
import { configFor, inSchool } from '../school.js';

/** Takes those off the roster who were erased after the copy was made; what they wrote went when the store was opened. Their number. */
async function eraseAgain(io: Io, folder: string): Promise<number> {
  const erased = erasedList(folder).read();
  if (erased.length === 0) return 0;
  return inSchool(io, folder, async ({ house, store }) => {
    const classes = new Set(await store.classes());
    let count = 0;
    for (const { classId, person } of erased) {
      if (!classes.has(classId)) continue;
      const state = await house.classes.load(classId);
      const by = whoErases(state, person);
      if (!state.people[person] || state.people[person].removed || by === null) continue;
      await mustMove(house, classId, by, [{ type: 'erase-person', person }]);
      count += 1;
    }
    return count;
  });
}

/** Puts a copy made by backup into an empty data folder. */
export const verb: Verb = {
  name: 'restore',
  usage: 'restore FILE --data DIR',
  words:
    'puts a copy made by backup into a data folder without data; whom a file “erased” there names is erased again',
  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { data: { type: 'string' } },
    });
    const [file] = positionals;
    if (file === undefined || positionals.length > 1)
      throw new Fault('usage', 'Cannot restore, expected one file', `Use: ${verb.usage}`);
    const config = configFor(io, values.data);
    await restoreStore(file, config.data);
    const again = await eraseAgain(io, config.data);
    const told = again === 0 ? '' : ` Erased again: ${again}.`;
    io.err(
      `Restored into ${config.data}.${told} Put the file “key” back beside it, or slips and links made earlier no longer work.`,
    );
    return 0;
  },
};
