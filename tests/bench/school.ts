import { fixtureText, demoPassages } from '../../src/app/demo-class.js';
import { foundClass, mustMove, personNamed } from '../../src/app/founding.js';
import { readConfig } from '../../src/app/config.js';
import { openSchool } from '../../src/app/school.js';
import type { PersonId } from '../../shared/ids.js';
import { readyMoves } from '../support/ready-moves.js';
import { progress } from './figures.js';

export const slackTeam = 'T1';
export const discordServer = '800000000000000001';

/** A pupil on both platforms. */
export interface BenchPupil {
  readonly slack: string;
  readonly discord: string;
}

const birds = ['Wren', 'Finch', 'Pipit', 'Dunlin', 'Siskin', 'Linnet'] as const;

/** Makes a data folder with classes of six pupils whose practice runs, everybody known on both platforms, places tied; the pupils, and the first segment of their passage. */
export async function makeSchool(
  data: string,
  classes: number,
): Promise<{ readonly pupils: readonly BenchPupil[]; readonly segment: string }> {
  const config = readConfig({ TURNSTONE_DATA: data, TURNSTONE_LOG: 'silent' });
  const { store, house } = await openSchool(config, () => 'http://127.0.0.1');
  const pupils: BenchPupil[] = [];
  let segment = '';
  try {
    for (let nth = 0; nth < classes; nth += 1) {
      if (nth % 24 === 0) progress(`classes made: ${nth} of ${classes} ...`);
      const name = `Harbour Readers ${nth}`;
      const { classId, tutor } = await foundClass(house, { name, zone: 'UTC', nickname: 'Plover' });
      const group = Object.values((await house.classes.load(classId)).groups)[0]?.id;
      if (group === undefined) throw new Error('Cannot make a class, expected a group, got none');
      await mustMove(house, classId, tutor, [
        { type: 'change-setting', setting: 'moderation', value: 'hold what is doubtful' },
        ...readyMoves,
        ...birds.map((nickname) => ({ type: 'add-person', nickname, role: 'pupil', group }) as const),
        { type: 'add-passage', text: fixtureText(demoPassages[0]), grade: 5 },
      ]);
      const [passage] = Object.values((await house.classes.load(classId)).shelf);
      if (!passage) throw new Error('Cannot make a class, expected a passage, got none');
      segment = passage.reading.segments[0]?.text ?? '';
      const state = await mustMove(house, classId, tutor, [
        { type: 'set-passage', passage: passage.id, group },
        { type: 'start-practice', group },
      ]);
      for (const [at, nickname] of birds.entries()) {
        const person: PersonId | null = personNamed(state, nickname);
        if (person === null) throw new Error('Cannot make a class, expected a pupil, got none');
        const one = { slack: `U${nth}N${at}`, discord: String(7_000_000 + nth * 10 + at) };
        pupils.push(one);
        await store.bindIdentity({ channel: 'slack', tenant: slackTeam, user: one.slack, classId, person });
        await store.bindIdentity({
          channel: 'discord',
          tenant: discordServer,
          user: one.discord,
          classId,
          person,
        });
      }
      for (const [channel, tenant, room] of [
        ['slack', slackTeam, `C${nth}`],
        ['discord', discordServer, String(6_000_000 + nth)],
      ] as const) {
        await store.bindPlace(classId, { channel, tenant, room }, { to: 'channel', group });
      }
    }
  } finally {
    await store.close();
  }
  return { pupils, segment };
}
