import { webApi } from '@slack/bolt';
import { codeOf } from '../desk/desk.js';
import { scopes } from '../manifest.js';
import { apiAddress, type SlackOauth, type SlackOptions } from '../options.js';
import { clientOptions, troubleOf } from '../web.js';
import { installCookie, installPage, proofIn } from './page.js';
import { installPath, redirectPath } from './paths.js';
import { openStates } from './states.js';
import type { Workspaces } from './workspaces.js';

type Handler = (request: Request) => Promise<Response>;

/** Where Slack asks whether the app may be installed, beside its Web API. */
function authorizeAddress(api: string | null): URL {
  return new URL('/oauth/v2/authorize', api === null ? 'https://slack.com' : apiAddress(api));
}

/**
 * The installation for many workspaces (OAuth 2, Slack's "Installing with OAuth"): a page that begins it, and the page
 * that Slack sends the browser back to, where the code is changed into the workspace's own token.
 */
export function installGuests(
  oauth: SlackOauth,
  options: SlackOptions,
  workspaces: Workspaces,
): Readonly<Record<string, Handler>> {
  const { log, now } = options;
  const states = openStates(oauth.stateSecret, now);
  const base = oauth.base?.replace(/\/+$/u, '') ?? null;
  const secure = base?.startsWith('https:') ?? false;
  const redirect = base === null ? {} : { redirect_uri: `${base}${redirectPath}` };
  const gone = installCookie('', redirectPath, secure);

  const begin: Handler = () => {
    const { state, proof } = states.make();
    const address = authorizeAddress(options.api);
    const asked = { client_id: oauth.clientId, scope: scopes.map(({ name }) => name).join(','), state };
    address.search = new URLSearchParams({ ...asked, ...redirect }).toString();
    const cookie = installCookie(proof, redirectPath, secure);
    return Promise.resolve(installPage('install how', 200, { href: address.href, cookie }));
  };

  const exchange = async (code: string): Promise<Response> => {
    const client = new webApi.WebClient(undefined, clientOptions(options));
    const answer = await client.oauth.v2.access({
      client_id: oauth.clientId,
      client_secret: oauth.clientSecret,
      code,
      ...redirect,
    });
    const { team, access_token: token, scope = '', is_enterprise_install: wide } = answer;
    if (wide === true || !team?.id || !token) return installPage('install not here', 400, { cookie: gone });
    const installed = { tenant: team.id, token, scopes: scope.split(','), at: now() };
    if (!(await workspaces.keep(installed))) return installPage('install full', 503, { cookie: gone });
    log.warn({ tenant: team.id }, 'a Slack workspace installed the app');
    return installPage('install done', 200, { cookie: gone, slots: { name: team.name ?? team.id } });
  };

  const finish: Handler = async (request) => {
    const asked = new URL(request.url).searchParams;
    const again = { href: installPath, cookie: gone };
    if (!states.use(asked.get('state') ?? '', proofIn(request.headers.get('cookie')))) {
      log.warn({}, 'an installation on Slack came back with a state that is not good');
      return installPage('install stale', 400, again);
    }
    const code = asked.get('code');
    if (code === null) return installPage('install refused', 200, again);
    try {
      return await exchange(code);
    } catch (why) {
      const trouble = troubleOf(why, now());
      log.error({ code: 'code' in trouble ? trouble.code : codeOf(why) }, 'an installation on Slack failed');
      return installPage('install failed', 502, again);
    }
  };

  return { [installPath]: begin, [redirectPath]: finish };
}
