import type { BoundPlace, Finding } from '../../../../shared/channel.js';
import type { Instant } from '../../../../shared/time.js';
import { installPath } from '../install/paths.js';
import type { Workspaces } from '../install/workspaces.js';
import { scopes } from '../manifest.js';
import type { SlackOptions } from '../options.js';
import { troubleOf } from '../web.js';
import { openAsk } from './ask.js';
import { checkPlace, placeName } from './place.js';
import { checkWords } from './words.js';

const fine = (words: string): Finding => ({ fine: true, words });
const mend = (words: string): Finding => ({ fine: false, words });

/** How far the clocks may differ, in milliseconds. */
const clockBound = 60_000;

/** A token that the bot speaks with; the workspace is asked of Slack where the configuration gives it. */
interface Key {
  readonly token: string;
  readonly tenant: string | null;
}

/** What one workspace said. */
interface Heard {
  readonly found: readonly Finding[];
  readonly team: string | null;
  readonly at: number | null;
}

function troubleFinding(why: unknown, key: Key, { api }: SlackOptions): Finding {
  const trouble = troubleOf(why, 0);
  if (trouble.kind === 'slow down') return mend(checkWords('slow down'));
  if (trouble.kind !== 'refused') {
    const where = api === null ? '' : checkWords('where');
    return mend(checkWords('cannot ask', { code: trouble.code, where }));
  }
  const whose =
    key.tenant === null
      ? checkWords('of the configuration')
      : checkWords('of workspace', { tenant: key.tenant });
  const how = key.tenant === null ? checkWords('by token') : checkWords('by page', { path: installPath });
  return mend(checkWords('token bad', { whose, code: trouble.code, how }));
}

function scopeFindings(team: string, granted: readonly string[] | undefined): readonly Finding[] {
  if (granted === undefined) return [mend(checkWords('scopes unknown', { team }))];
  const lacks = scopes.filter(({ name }) => !granted.includes(name));
  if (lacks.length === 0) return [fine(checkWords('scopes fine', { team }))];
  return lacks.map(({ name, why, without }) => mend(checkWords('scope lacks', { team, name, why, without })));
}

async function checkWorkspace(
  key: Key,
  options: SlackOptions,
  places: readonly BoundPlace[],
): Promise<Heard> {
  const { client, clock } = openAsk(key.token, options);
  try {
    const answer = await client.auth.test();
    const team = answer.team_id ?? key.tenant ?? '';
    const label = answer.team === undefined ? team : `${answer.team} (${team})`;
    const own = places.filter(({ tenant }) => tenant === team);
    const inPlaces = await Promise.all(own.map((place) => checkPlace(client, place)));
    const found = [
      fine(checkWords('token fine', { team: label })),
      ...scopeFindings(label, answer.response_metadata?.scopes),
      ...inPlaces.flat(),
    ];
    return { found, team, at: clock() };
  } catch (why) {
    return { found: [troubleFinding(why, key, options)], team: key.tenant, at: clock() };
  }
}

async function checkSocket(options: SlackOptions): Promise<readonly Finding[]> {
  if (options.appToken === null) return [];
  try {
    await openAsk(options.appToken, options).client.apps.connections.open({});
    return [fine(checkWords('socket fine'))];
  } catch (why) {
    const trouble = troubleOf(why, 0);
    // Whoever can't be reached is named by the workspace's own finding.
    return trouble.kind === 'refused' ? [mend(checkWords('socket bad', { code: trouble.code }))] : [];
  }
}

function clockFinding(at: number | null, now: Instant): readonly Finding[] {
  if (at === null) return [];
  const ahead = now - at;
  if (Math.abs(ahead) <= clockBound) return [fine(checkWords('clock fine'))];
  const seconds = Math.round(Math.abs(ahead) / 1000);
  return [mend(checkWords('clock bad', { seconds, way: ahead > 0 ? 'ahead' : 'behind' }))];
}

/** Asks Slack what it grants; never throws for what Slack does, and ends within eight seconds. */
export async function checkSlack(
  options: SlackOptions,
  workspaces: Workspaces,
  places: readonly BoundPlace[],
  now: Instant,
): Promise<readonly Finding[]> {
  const installed = await workspaces.installed();
  const keys: readonly Key[] = [
    ...(options.botToken === null ? [] : [{ token: options.botToken, tenant: null }]),
    ...installed.map(({ token, tenant }) => ({ token, tenant })),
  ];
  const [heard, socket] = await Promise.all([
    Promise.all(keys.map((key) => checkWorkspace(key, options, places))),
    checkSocket(options),
  ]);
  const teams = heard.map(({ team }) => team);
  // Where the configuration's own workspace couldn't be asked, nobody knows which places are in it.
  const strays = teams.includes(null) ? [] : places.filter(({ tenant }) => !teams.includes(tenant));
  return [
    ...((await workspaces.locked()) ? [mend(checkWords('locked', { path: installPath }))] : []),
    ...(keys.length === 0 ? [mend(checkWords('none installed', { path: installPath }))] : []),
    ...heard.flatMap(({ found }) => found),
    ...socket,
    ...clockFinding(heard.find(({ at }) => at !== null)?.at ?? null, now),
    ...strays.map((place) =>
      mend(checkWords('not installed', { place: placeName(place), tenant: place.tenant })),
    ),
    ...(places.length === 0 ? [fine(checkWords('no place'))] : []),
  ];
}
