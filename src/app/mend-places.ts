import type { ClassId } from '../../shared/ids.js';
import type { Audience } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import type { Place, Store } from '../store/store.js';
import { tellMended } from './tell-stuck.js';

function isSame(a: Place, b: Place): boolean {
  return a.channel === b.channel && a.tenant === b.tenant && a.room === b.room;
}

/**
 * What follows when a place is tied. Whoever ties it has mended what was in the way, so what is stuck there is tried again;
 * and where another place for the same readers has stopped, its channel was deleted or closed to us: this one takes its part,
 * and what waited there is said here.
 */
export async function mendPlaces(
  store: Pick<Store, 'places' | 'stuck' | 'movePlace' | 'outboxAgain'>,
  classId: ClassId,
  here: Place,
  audience: Audience,
  tell: (telling: Telling) => Promise<void>,
): Promise<void> {
  const stopped = (await store.stuck(classId)).map(({ place }) => place);
  for (const { place, audience: of } of await store.places(classId)) {
    if (isSame(place, here) || place.channel !== here.channel || place.tenant !== here.tenant) continue;
    if (JSON.stringify(of) !== JSON.stringify(audience)) continue;
    if (!stopped.some((one) => isSame(one, place))) continue;
    await store.movePlace(classId, place, here);
    await tell(tellMended(place));
  }
  for (const { key, place } of await store.stuck(classId)) {
    if (!isSame(place, here)) continue;
    await store.outboxAgain(key);
    await tell(tellMended(place));
  }
}
