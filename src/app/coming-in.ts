import type { Asked, House, Reply, Who } from '../../shared/channel.js';
import { fill } from '../coaching/catalogue.js';
import { doorWords } from '../coaching/door-words.js';
import { missingOf } from '../practice/readiness.js';
import type { SecondKind } from '../practice/second-key.js';
import type { ClassState, Person } from '../practice/state.js';
import type { Slip, Store } from '../store/store.js';
import type { Classes } from './classes.js';
import type { Doors } from './doors.js';
import { note } from './handle.js';
import type { SecondKeys } from './second-keys.js';

export interface ComingInDeps {
  readonly doors: Doors;
  readonly keys: SecondKeys;
  readonly classes: Classes;
  readonly store: Pick<Store, 'bindIdentity'>;
  readonly move: House['move'];
}

type Refused = { readonly refused: string };

interface Found {
  readonly slip: Slip;
  readonly state: ClassState;
  readonly person: Person;
}

const refuse = (word: keyof typeof doorWords): Refused => ({ refused: fill(doorWords[word]) });

/** The ways in, of the page and of platforms: a slip or link, a class that is ready for pupils, and a second key where there is one. */
export function openComingIn({
  doors,
  keys,
  classes,
  store,
  move,
}: ComingInDeps): Pick<House, 'signIn' | 'join' | 'tellGrownUp' | 'choosePictures' | 'hasSecondKey'> {
  const find = async (secret: string, from: string): Promise<Found | Refused> => {
    const slip = await doors.find(secret, from);
    if ('refused' in slip) return slip;
    const state = await classes.load(slip.classId);
    const person = state.people[slip.person];
    return person && !person.removed ? { slip, state, person } : refuse('opens nothing');
  };

  /** Which second key is asked for: a pupil's wherever they have one or the class wants it, an adult's where the class wants it. */
  const wanted = async ({
    state,
    person,
  }: Found): Promise<{ readonly kind: SecondKind; readonly choose: boolean } | null> => {
    const has = await keys.kindOf(state.id, person.id);
    const pupil = person.role === 'pupil';
    const asks = pupil ? has !== null || state.settings.pictureSecret : state.settings.staffPassphrase;
    return asks ? { kind: pupil ? 'pictures' : 'passphrase', choose: has === null } : null;
  };

  const admit = async (found: Found, second: string | undefined): Promise<true | Asked> => {
    const asks = await wanted(found);
    if (asks === null) return true;
    const { kind, choose } = asks;
    if (second === undefined) return { asks: kind, choose, why: null };
    const { state, person } = found;
    const why = choose
      ? await keys.choose(state.id, person.id, kind, second, 'only where there is none')
      : await keys.check(state.id, person.id, second);
    return why === null ? true : { asks: kind, choose, why };
  };

  const isClosed = ({ state, person }: Found): boolean =>
    person.role === 'pupil' && missingOf(state).length > 0;

  const who = (found: Found): Who => ({ classId: found.state.id, person: found.person.id });

  return {
    async signIn(secret, from, second) {
      const found = await find(secret, from);
      if ('refused' in found) return found;
      if (isClosed(found)) return refuse('not ready');
      const admitted = await admit(found, second);
      return admitted === true ? doors.open(found.slip) : admitted;
    },
    async join(channel, tenant, user, code) {
      const [secret = '', ...rest] = code.split(',');
      const second = rest.join(',').trim();
      const found = await find(secret, `${channel} ${tenant} ${user}`);
      if ('refused' in found) return found;
      if (isClosed(found)) return refuse('not ready');
      const asks = await wanted(found);
      if (asks !== null && asks.choose) return refuse(`${asks.kind} first`);
      if (asks !== null && second === '') return refuse(`${asks.kind} after code`);
      const admitted = await admit(found, second);
      if (admitted !== true) return { refused: admitted.why ?? '' };
      await store.bindIdentity({ channel, tenant, user, ...who(found) });
      return who(found);
    },
    async tellGrownUp(secret, from, updateId, text): Promise<Reply | Refused> {
      const found = await find(secret, from);
      if ('refused' in found) return found;
      if (found.person.role !== 'pupil') return refuse('opens nothing');
      const fields = text.trim() === '' ? {} : { text };
      // Named for the person, so that nobody is answered with another's reply.
      const id = `door:${found.person.id}:${updateId}`;
      return move({ id, who: who(found), move: 'tell-grown-up', fields });
    },
    async choosePictures(by, pictures) {
      const state = await classes.load(by.classId);
      if (state.people[by.person]?.role !== 'pupil')
        return { done: false, messages: [note(by.person, fill(doorWords['pictures pupils']))] };
      const why = await keys.choose(by.classId, by.person, 'pictures', pictures, 'also anew');
      return { done: why === null, messages: [note(by.person, why ?? fill(doorWords['pictures kept']))] };
    },
    async hasSecondKey(by) {
      return (await keys.kindOf(by.classId, by.person)) !== null;
    },
  };
}
