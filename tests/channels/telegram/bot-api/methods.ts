/** The methods our bot uses, by their names in small letters; each answers with the result or throws a refusal. */
import { captionLimitOfServer, pointsIn, textLimitOfServer } from './limits.ts';
import type { CallArguments, UploadedFile } from './call-arguments.ts';
import { checkedMarkup, checkedText } from './content-check.ts';
import { badRequest, Refusal, webhookIsSet } from './refusal.ts';
import type { StandInClock } from './stand-in-clock.ts';
import type { UpdateQueue } from './update-queue.ts';
import type { Webhook } from './webhook-courier.ts';
import { bot, type KeptMessage, type World } from './world.ts';

export interface Behind {
  readonly world: World;
  readonly queue: UpdateQueue;
  readonly clock: StandInClock;
  webhook: Webhook | null;
}

type Answering = (args: CallArguments, behind: Behind) => unknown;

/** A tap is answered within this time or not at all. */
const tapLifeMs = 150_000;
const inText = { text: 'text', entities: 'entities' };
const inCaption = { text: 'caption', entities: 'caption_entities' };

export const methods: ReadonlyMap<string, Answering> = new Map<string, Answering>([
  [
    'getme',
    () => ({ ...bot, can_join_groups: false, can_read_all_group_messages: false, supports_inline_queries: false }),
  ],
  ['getupdates', getUpdates],
  ['setwebhook', setWebhook],
  ['deletewebhook', deleteWebhook],
  ['getwebhookinfo', webhookInfo],
  ['sendmessage', sendMessage],
  ['sendphoto', sendPhoto],
  ['senddocument', sendDocument],
  ['editmessagetext', editMessageText],
  ['editmessagecaption', editMessageCaption],
  ['deletemessage', deleteMessage],
  ['answercallbackquery', answerCallbackQuery],
  ['getmyname', (args, { world }) => ({ name: heir(args, world, 'name') })],
  ['setmyname', (args, { world }) => put(args, world, 'name', 'name', 64)],
  ['getmydescription', (args, { world }) => ({ description: heir(args, world, 'description') })],
  ['setmydescription', (args, { world }) => put(args, world, 'description', 'description', 512)],
  ['getmyshortdescription', (args, { world }) => ({ short_description: heir(args, world, 'about') })],
  ['setmyshortdescription', (args, { world }) => put(args, world, 'short_description', 'about', 120)],
  ['getmycommands', (args, { world }) => world.setting(args.text('language_code')).commands],
  ['setmycommands', setMyCommands],
  ['getchatmenubutton', (_args, { world }) => world.menuButton],
  ['setchatmenubutton', setChatMenuButton],
]);

function getUpdates(args: CallArguments, { queue, webhook }: Behind): unknown {
  if (webhook) throw new Refusal(409, webhookIsSet);
  queue.allow(kindsOf(args));
  return queue.get({
    offset: args.integer('offset', 0),
    limit: args.integer('limit', 100, 1, 100),
    timeoutS: args.integer('timeout', 0, 0, 50),
  });
}

function kindsOf(args: CallArguments): readonly string[] | undefined {
  const kinds = args.json('allowed_updates', "Can't parse allowed updates");
  return Array.isArray(kinds) ? (kinds as readonly string[]) : undefined;
}

function setWebhook(args: CallArguments, behind: Behind): true {
  const url = args.text('url');
  if (url === '') return deleteWebhook(args, behind);
  if (!url.startsWith('https://')) throw badRequest('bad webhook: An HTTPS URL must be provided for webhook');
  const secret = args.text('secret_token');
  if (!/^[A-Za-z0-9_-]{0,256}$/.test(secret)) throw badRequest('secret token contains unallowed characters');
  behind.queue.allow(kindsOf(args));
  behind.webhook = { url, secret };
  return true;
}

function deleteWebhook(args: CallArguments, behind: Behind): true {
  if (args.text('drop_pending_updates') === 'true') behind.queue.clear();
  behind.webhook = null;
  return true;
}

function webhookInfo(_args: CallArguments, { queue, webhook }: Behind): unknown {
  return { url: webhook?.url ?? '', has_custom_certificate: false, pending_update_count: queue.pending.length };
}

function sendMessage(args: CallArguments, { world }: Behind): unknown {
  const chat = world.writable(args.text('chat_id'));
  const content = checkedText(args, inText, textLimitOfServer);
  const kept = world.keep(chat, { fromBot: true, kind: 'text', ...content, markup: checkedMarkup(args) });
  return world.shown(chat, kept);
}

function attached(args: CallArguments, name: string): UploadedFile | undefined {
  return args.files.get(/^attach:\/\/(.+)$/.exec(args.text(name))?.[1] ?? name);
}

/** Known by its file id no file of ours is sent, so one must be attached. */
function sendDocument(args: CallArguments, { world }: Behind): unknown {
  const chat = world.writable(args.text('chat_id'));
  const document = attached(args, 'document');
  if (!document) throw badRequest('there is no document in the request');
  if (document.bytes.length === 0) throw badRequest('file must be non-empty');
  // Stricter than the server, which gives a file without a name one of its own.
  if (!/^[\w.-]+\.\w+$/.test(document.filename)) throw badRequest('stand-in: a file without a plain name');
  const content = checkedText(args, inCaption, captionLimitOfServer);
  const kept = world.keep(chat, { fromBot: true, kind: 'document', ...content, markup: checkedMarkup(args), document });
  return world.shown(chat, kept);
}

function sendPhoto(args: CallArguments, { world }: Behind): unknown {
  const chat = world.writable(args.text('chat_id'));
  const photo = attached(args, 'photo')?.bytes;
  if (!photo) throw badRequest('there is no photo in the request');
  if (!photo.subarray(0, 4).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47]))) throw badRequest('IMAGE_PROCESS_FAILED');
  const content = checkedText(args, inCaption, captionLimitOfServer);
  const kept = world.keep(chat, { fromBot: true, kind: 'photo', ...content, markup: checkedMarkup(args), photo });
  return world.shown(chat, kept);
}

function editMessageText(args: CallArguments, behind: Behind): unknown {
  const found = editable(args, behind.world);
  if (found.message.kind !== 'text') throw badRequest('there is no text in the message to edit');
  return edit(args, behind, { ...found, ...checkedText(args, inText, textLimitOfServer) });
}

function editMessageCaption(args: CallArguments, behind: Behind): unknown {
  const found = editable(args, behind.world);
  if (found.message.kind === 'text') throw badRequest('there is no caption in the message to edit');
  return edit(args, behind, { ...found, ...checkedText(args, inCaption, captionLimitOfServer) });
}

function editable(args: CallArguments, world: World): { chat: number; message: KeptMessage } {
  const chat = world.writable(args.text('chat_id'));
  const message = world.messages(chat).get(args.integer('message_id', 0));
  if (!message) throw badRequest('message to edit not found');
  if (!message.fromBot) throw badRequest("message can't be edited");
  return { chat, message };
}

function edit(
  args: CallArguments,
  { world }: Behind,
  { chat, message, text, entities }: { chat: number; message: KeptMessage } & Pick<KeptMessage, 'text' | 'entities'>,
): unknown {
  const markup = checkedMarkup(args);
  const before = JSON.stringify([message.text, message.entities, message.markup]);
  if (JSON.stringify([text, entities, markup]) === before) {
    throw badRequest(
      'message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
    );
  }
  Object.assign(message, { text, entities, markup, edits: message.edits + 1 });
  return world.shown(chat, message);
}

function deleteMessage(args: CallArguments, { world }: Behind): true {
  const chat = world.writable(args.text('chat_id'));
  if (!world.messages(chat).delete(args.integer('message_id', 0))) throw badRequest('message to delete not found');
  return true;
}

function answerCallbackQuery(args: CallArguments, { world, clock }: Behind): true {
  if (pointsIn(args.text('text')) > 200) throw badRequest('MESSAGE_TOO_LONG');
  const tap = world.taps.get(args.text('callback_query_id'));
  if (!tap || tap.answeredAt !== null || clock.now() > tap.at + tapLifeMs) {
    throw badRequest('query is too old and response timeout expired or query ID is invalid');
  }
  tap.answeredAt = clock.now();
  return true;
}

/** A language without its own setting shows the common one. */
function heir(args: CallArguments, world: World, field: 'name' | 'description' | 'about'): string {
  return world.setting(args.text('language_code'))[field] || world.setting('')[field];
}

function put(
  args: CallArguments,
  world: World,
  argument: string,
  field: 'name' | 'description' | 'about',
  limit: number,
): true {
  const text = args.text(argument);
  if (pointsIn(text) > limit) throw badRequest(`BOT_${field.toUpperCase()}_INVALID`);
  world.setting(checkedLanguage(args))[field] = text;
  return true;
}

function setMyCommands(args: CallArguments, { world }: Behind): true {
  const list = args.json('commands', "Can't parse commands JSON object");
  if (!Array.isArray(list)) throw badRequest('Expected an Array of BotCommand');
  const commands = list as { command?: unknown; description?: unknown }[];
  if (commands.length > 100) throw badRequest('BOT_COMMANDS_TOO_MUCH');
  for (const { command, description } of commands) {
    if (typeof command !== 'string' || !/^[a-z0-9_]{1,32}$/.test(command)) throw badRequest('BOT_COMMAND_INVALID');
    if (typeof description !== 'string' || description === '' || pointsIn(description) > 256) {
      throw badRequest('BOT_COMMAND_DESCRIPTION_INVALID');
    }
  }
  world.setting(checkedLanguage(args)).commands = commands as { command: string; description: string }[];
  return true;
}

function checkedLanguage(args: CallArguments): string {
  const code = args.text('language_code');
  if (!/^([a-z]{2})?$/.test(code)) throw badRequest('invalid language code specified');
  return code;
}

function setChatMenuButton(args: CallArguments, { world }: Behind): true {
  const button = args.json('menu_button', "Can't parse menu button JSON object") ?? { type: 'default' };
  const type = (button as { type?: unknown }).type;
  if (!['commands', 'default', 'web_app'].includes(String(type))) throw badRequest('MenuButton has unsupported type');
  world.menuButton = button;
  return true;
}
