/** The next empty line of the sheet. */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { longestText, type PageWords } from './wire.ts';

interface Props {
  readonly words: PageWords;
  /** Something was written, chosen or opened already: from then on not every line is about a tea. */
  readonly hasBegun: boolean;
  readonly write: (text: string) => void;
}

export function WritingLine({ words, hasBegun, write }: Props): JSX.Element {
  const [text, setText] = useState('');
  const field = useRef<HTMLTextAreaElement>(null);
  const send = (): void => {
    if (text.trim() === '') return field.current?.focus();
    write(text);
    setText('');
  };
  return (
    <form
      class="writing"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <label class="unseen" for="next-line">
        {words['page-write-label']}
      </label>
      <div class="growing">
        {/* A line that has just ended has no height of its own. */}
        <span aria-hidden="true">{`${text} `}</span>
        <textarea
          id="next-line"
          dir="auto"
          ref={field}
          rows={1}
          maxLength={longestText}
          placeholder={words[hasBegun ? 'page-write-on' : 'page-write-hint']}
          enterkeyhint="send"
          autocomplete="off"
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || event.shiftKey || isComposing(event)) return;
            event.preventDefault();
            send();
          }}
        />
      </div>
      <button type="submit">{words['page-write']}</button>
      <p class="quiet full" role="status">
        {text.length >= longestText && words['page-write-full']}
      </p>
    </form>
  );
}

/** In Safari's order of events the Enter that takes a word comes when its composing is over, and bears this code alone. */
const takenByInputMethod = 229;

/** While a Chinese word is being composed, Enter belongs to the input method. */
const isComposing = (event: KeyboardEvent): boolean => event.isComposing || event.keyCode === takenByInputMethod;
