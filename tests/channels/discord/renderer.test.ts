import { rendererContract } from '../../contracts/channel-contract.js';
import { discordRenderer } from '../../support/discord-payloads.js';

rendererContract('Discord', discordRenderer);
