/** One outgoing message as a letter: its words, its file, and a name by which a second copy is recognised. */
import MailComposer from 'nodemailer/lib/mail-composer';
import type { Outgoing } from '../../messages.ts';

export interface Letterhead {
  /** The address letters come from, and answers go to. */
  readonly from: string;
  /** The house, as it signs in a language. */
  nameIn(language: Outgoing['language']): string;
  /** Said under every letter: there is nothing to tap here. */
  footIn(language: Outgoing['language']): string;
}

export interface Envelope {
  readonly from: string;
  readonly to: string;
}

/** Plain addresses only: nothing that could begin another header, another recipient or another command. */
export function isPlainAddress(text: string): boolean {
  return text.length <= 254 && /^[^\s@<>()[\]",:;\\\p{C}]{1,64}@[^\s@<>()[\]",:;\\\p{C}]+$/u.test(text);
}

/** The letter as bytes, as RFC 5322 has it. */
export function letterOf(message: Outgoing, head: Letterhead): Promise<Buffer> {
  const { id, chat, language, file } = message;
  const composer = new MailComposer({
    messageId: `<${id}@${head.from.replace(/^.*@/, '')}>`,
    from: { name: oneLine(head.nameIn(language)), address: head.from },
    to: { name: '', address: chat },
    subject: subjectOf(message),
    text: textOf(message, head.footIn(language)),
    headers: { 'Content-Language': language, 'Auto-Submitted': 'auto-generated' },
    attachments: file === undefined ? [] : [attachmentOf(file)],
    disableFileAccess: true,
    disableUrlAccess: true,
  });
  return composer.compile().build();
}

/** Longer ones are cut off in most lists of letters. Common practice, no source. */
const longestSubject = 100;

/** What the message says it is about, or else how it begins. */
function subjectOf({ subject, paragraphs }: Outgoing): string {
  const [begins = ''] = (subject ?? paragraphs[0] ?? '').trim().split('\n');
  const line = oneLine(begins);
  return line.length <= longestSubject
    ? line
    : `${Array.from(line)
        .slice(0, longestSubject - 1)
        .join('')}…`;
}

function textOf({ paragraphs, ladder }: Outgoing, foot: string): string {
  const rungs = ladder === undefined ? [] : [[ladder.title, ...ladder.rungs.map(({ label }) => label)].join('\n')];
  return `${[...paragraphs, ...rungs].join('\n\n')}\n\n-- \n${foot}\n`;
}

/** Its method stands in the type as in the file (RFC 6047 §2.4), so that a calendar knows what to do with it. */
function attachmentOf({ name, mediaType, text }: NonNullable<Outgoing['file']>) {
  return {
    filename: oneLine(name),
    content: Buffer.from(text),
    contentType: `${mediaType}; charset=utf-8`,
    contentTransferEncoding: 'base64',
  };
}

function oneLine(text: string): string {
  return text.replace(/[\p{C}\u2028\u2029]+/gu, ' ').trim();
}
