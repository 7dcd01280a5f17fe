/** The same sheet on another device: a code shown here, or one from there typed in. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { forgetEverything } from './kept.ts';
import { houseNow } from './server-clock.ts';
import type { PageWordKey, PageWords } from './wire.ts';

interface Pass {
  readonly code: string;
  readonly until: number;
}

export function Elsewhere({ words }: { readonly words: PageWords }): JSX.Element {
  return (
    <details>
      <summary>{words['page-elsewhere']}</summary>
      <ShownCode words={words} />
      <TypedCode words={words} />
    </details>
  );
}

function ShownCode({ words }: { readonly words: PageWords }): JSX.Element {
  const [pass, setPass] = useState<Pass | null>(null);
  const [failed, setFailed] = useState<PageWordKey | null>(null);
  useEffect(() => {
    if (pass === null) return undefined;
    const timer = setTimeout(() => setPass(null), pass.until - houseNow());
    return () => clearTimeout(timer);
  }, [pass]);
  const show = async (): Promise<void> => {
    const answer = await fetch('/pass', { method: 'POST' }).catch(() => null);
    setPass(answer?.ok ? ((await answer.json()) as Pass) : null);
    setFailed(answer?.ok ? null : 'page-failed');
  };
  return (
    <div role="status">
      {pass === null ? (
        <button type="button" onClick={() => void show()}>
          {words['page-elsewhere-show']}
        </button>
      ) : (
        <>
          <p class="pass">{pass.code}</p>
          <p>{words['page-elsewhere-how']}</p>
        </>
      )}
      {failed && <p>{words[failed]}</p>}
    </div>
  );
}

function TypedCode({ words }: { readonly words: PageWords }): JSX.Element {
  const [code, setCode] = useState('');
  const [failed, setFailed] = useState<PageWordKey | null>(null);
  const join = async (): Promise<void> => {
    const answer = await fetch('/join', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ code }),
    }).catch(() => null);
    if (answer?.status !== 204) return setFailed(failures[answer?.status ?? 0] ?? 'page-failed');
    await forgetEverything();
    location.assign('/');
  };
  return (
    <form
      class="joining"
      onSubmit={(event) => {
        event.preventDefault();
        void join();
      }}
    >
      <label for="code">{words['page-elsewhere-type']}</label>
      <input
        id="code"
        class="pass"
        inputMode="numeric"
        autocomplete="off"
        required
        maxLength={16}
        placeholder="0000 0000"
        value={code}
        aria-describedby="code-failed"
        onInput={(event) => setCode(event.currentTarget.value)}
      />
      <button type="submit">{words['page-elsewhere-join']}</button>
      <p id="code-failed" role="status">
        {failed && words[failed]}
      </p>
    </form>
  );
}

const failures: Readonly<Record<number, PageWordKey>> = {
  404: 'page-elsewhere-wrong',
  429: 'page-elsewhere-slow',
};
