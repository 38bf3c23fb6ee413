import { channelContract } from '../../contracts/channel-contract.js';
import { openDiscord } from '../../support/discord-open.js';
import { seenText } from '../../support/discord-payloads.js';
import { server } from '../../support/discord-stand-in.js';

channelContract('Discord', async (house) => {
  const { channel, standIn, stop } = await openDiscord(house);
  standIn.openRoom('101');
  return {
    channel,
    tenant: server,
    room: '101',
    standing: () => standIn.room('101').map(seenText),
    async echo() {
      for (const author of ['900000000000000001', '700000000000000001']) {
        standIn.gateway.dispatch('MESSAGE_CREATE', {
          id: '5',
          channel_id: '101',
          guild_id: server,
          author: { id: author, username: 'x', discriminator: '0', bot: author.startsWith('9') },
          content: 'hello',
          timestamp: new Date(0).toISOString(),
          attachments: [],
          embeds: [],
          mentions: [],
          mention_roles: [],
        });
      }
      await new Promise((done) => setTimeout(done, 100));
    },
    stop,
  };
});
