import type { Look } from '../../shared/looks.js';
import type { Block, FieldOption, Message } from '../../shared/messages.js';
import { helps, strategies } from '../../shared/strategies.js';
import { isShown, postsOn, pupilsOf } from '../practice/lookup.js';
import type { Group } from '../practice/state.js';
import { strategyWords } from '../progress/doing-words.js';
import { standing } from '../progress/in-group.js';
import { isMet } from '../progress/verdict.js';
import { answer, nameOf, staff, type Asked } from './asked.js';
import {
  choice,
  choices,
  form,
  heading,
  look,
  move,
  pick,
  prose,
  reading,
  sameOptions,
  typed,
} from './blocks.js';
import { groupsAsked } from './groups-asked.js';
import { staffQuotation } from './staff-posts.js';

/** How evidence can come at the table; what a pupil types comes through their own page. */
const givenLive = ['said', 'heard', 'scribed'] as const;
const levels = [0, 1, 2, 3] as const;

function leaders(asked: Asked, group: Group): readonly Block[] {
  const pupils = pupilsOf(asked.state, group.id);
  const here = new Set(pupils.map(({ id }) => id));
  const drawn = group.lot.find((person) => here.has(person) && person !== group.lastLeader);
  return [
    ...(drawn === undefined ? [] : [prose(staff('drawn', { who: nameOf(asked.state, drawn) }))]),
    ...choices(
      staff('tap who led'),
      pupils.map(({ id }) => choice(nameOf(asked.state, id), move('note-led', { person: id }))),
    ),
    ...(group.practice.phase === 'open'
      ? choices(
          staff('tap who leads'),
          pupils.map(({ id }) =>
            choice(nameOf(asked.state, id), move('name-leader', { group: group.id, person: id })),
          ),
        )
      : []),
  ];
}

function noteForm(asked: Asked, group: Group, stop: number | null): Block {
  const pupils = pupilsOf(asked.state, group.id);
  const option = (value: string, label: string): FieldOption => ({ value, label });
  return form(
    staff('note title'),
    move('note-live', stop === null ? {} : { stop: String(stop) }),
    [
      pick(
        'person',
        staff('pupil label'),
        pupils.map(({ id }) => option(id, nameOf(asked.state, id))),
      ),
      pick(
        'do',
        staff('strategy label'),
        strategies.map((one) => option(one, strategyWords(one))),
      ),
      pick(
        'level',
        staff('level label'),
        levels.map((level) => option(String(level), staff('level', { level }))),
      ),
      pick('given', staff('given label'), sameOptions(givenLive), true, 'said'),
      pick('help', staff('help label'), sameOptions(helps), false),
      typed('text', 'text', staff('sentence label'), { required: false }),
    ],
    staff('note'),
  );
}

/** Posts that met the mark and are public already may be shown round; weak ones stay with staff. */
async function strongPosts(asked: Asked, group: Group, stop: number): Promise<readonly Block[]> {
  const at = standing(group.practice);
  if (at === null) return [];
  const rows = await asked.port.store.evidence({ classId: asked.state.id, passage: at.passage });
  const strong = new Set(rows.filter(isMet).map((row) => row.post));
  const posts = postsOn(asked.state, group.id, at.passage, stop).filter(
    (post) => isShown(post) && strong.has(post.id),
  );
  if (posts.length === 0) return [];
  return [heading(staff('strong posts')), ...posts.map((post) => staffQuotation(asked.state, post))];
}

async function oneGroup(asked: Asked, group: Group): Promise<Message> {
  const at = standing(group.practice);
  const passage = at === null ? undefined : asked.state.shelf[at.passage];
  const many = passage?.reading.segments.length ?? 0;
  const stop = at === null || many === 0 ? null : Math.min(at.closed, many - 1);
  const segment = stop === null ? undefined : passage?.reading.segments[stop];
  const title = passage === undefined ? group.name : `${group.name}: ${passage.reading.title}`;
  return answer(asked, title, [
    heading(title),
    ...(segment === undefined || stop === null
      ? [prose(staff('phase none'))]
      : [heading(staff('segment title', { part: stop + 1, many })), reading(segment.text)]),
    ...leaders(asked, group),
    noteForm(asked, group, stop),
    ...(stop === null ? [] : await strongPosts(asked, group, stop)),
    ...(stop === null
      ? []
      : choices(null, [
          choice(staff('read live'), move('read-live', { group: group.id, to: String(stop) })),
          choice(staff('see digest'), look('digest', { group: group.id })),
        ])),
  ]);
}

/** The tool open on the table of a live session: the segment large, who leads, a tap for level and help, what was said. */
export function atTheTable(
  asked: Asked,
  { group }: Extract<Look, { type: 'at-the-table' }>,
): Promise<readonly Message[]> {
  return Promise.all(groupsAsked(asked, group).map((one) => oneGroup(asked, one)));
}
