import { fade } from '../coaching/fading.js';
import type { PersonId } from '../../shared/ids.js';
import { strategies, type Doing } from '../../shared/strategies.js';
import { add, type Deciding } from './deciding.js';
import { rowOf } from './evidence-of.js';

/** Gives a pupil less help after good turns and more after turns below, by the turns that the class still holds. */
export function fadeHelp(d: Deciding, id: PersonId, doing: Doing): void {
  const person = d.state.people[id];
  const strategy = strategies.find((one) => one === doing);
  if (person?.role !== 'pupil' || strategy === undefined) return;
  const rows = Object.values(d.state.posts).flatMap((post) =>
    post.person === id ? (rowOf(d.state, post) ?? []) : [],
  );
  const before = person.help[strategy];
  const help = fade(rows, strategy, before);
  if (help === null || help === before) return;
  const less = order.indexOf(help) > order.indexOf(before);
  const why = less ? 'two or three good turns' : 'two turns in a row below';
  add(d, { type: 'help-changed', person: id, strategy, help, why });
}

const order: readonly string[] = ['modelled', 'shared', 'guided', 'independent'];
