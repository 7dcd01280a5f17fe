/** Lets this page start workers from its own built files, and from nowhere else: the policy of the page knows this one gate. */

interface Gate {
  createScriptURL(url: string): string;
}

interface Gates {
  createPolicy(name: string, rules: Gate): Gate;
}

/** Missing in browsers that do not ask for it. */
const gates = (window as { readonly trustedTypes?: Gates }).trustedTypes;

const rules: Gate = {
  createScriptURL(url) {
    if (!/^\/assets\/[\w.-]+\.js$/.test(url)) throw new Error('only built files may work for this page');
    return url;
  },
};

const gate = gates?.createPolicy('own-workers', rules) ?? rules;

/** Takes an address the build made; only what this gives back may be started. */
export const ownWorker = (url: string): string => gate.createScriptURL(url);
