import type { DiscordSchool } from '../../support/discord-school.js';
import { mustMove } from '../../../src/app/founding.js';

const text =
  'When the tide goes out, the limpets stop moving. Each one clamps its shell down on its own spot.\n\n' +
  'The spot is called a home scar. The limpet has ground it into the stone.';

/** Sets a passage of ours to the group and starts the practice. */
export async function fixturePassage({ house, classId, group, people }: DiscordSchool): Promise<void> {
  const shelf = await mustMove(house, classId, people.Plover, [
    { type: 'add-passage', title: 'Limpets', text },
  ]);
  const passage = Object.values(shelf.shelf)[0];
  if (!passage) throw new Error('no passage was added');
  await mustMove(house, classId, people.Plover, [
    { type: 'set-passage', passage: passage.id, group },
    { type: 'start-practice', group },
  ]);
}
