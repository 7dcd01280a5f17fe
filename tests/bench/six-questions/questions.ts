/** The dialogue all contestants hold: a greeting, six questions, and what was answered told back. */

export const facts = ['name', 'tea', 'vessel', 'size', 'kettle', 'taste'] as const;
export type Fact = (typeof facts)[number];

export const questions: { readonly [fact in Fact]: string } = {
  name: 'What may I call you?',
  tea: 'Which tea have you got?',
  vessel: 'What do you brew it in?',
  size: 'How much does it hold?',
  kettle: 'How do you heat the water?',
  taste: 'How do you like it?',
};

export const closing = 'Thank you; this is what I heard:';

/** What a person writes, in this order; each is one update. */
export const messages = ['hello', 'Wren', 'oolong', 'gaiwan', '110 ml', 'on the stove', 'rather strong'] as const;

/** One way of holding the dialogue. */
export interface Talk {
  /** Resolves when the update is handled for good: its answer and where the person is now are durable. */
  tell(person: number, text: string): Promise<void>;
  /** Resolves when every answer is with the channel, and written down as sent. */
  settled(): Promise<void>;
  /** How many answers the channel got. */
  said(): number;
  close(): Promise<void>;
}

/** In a folder of its own. */
export type OpenTalk = (folder: string) => Promise<Talk>;
