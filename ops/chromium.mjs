// Where this machine keeps a Chromium for the tests of the page.
import { existsSync } from 'node:fs';

/**
 * The path of a Chromium, or null. CHROMIUM_PATH names one that is elsewhere. The one without windows goes first: it draws the
 * same pages and takes half of the time.
 */
export function chromium() {
  const named = process.env.CHROMIUM_PATH;
  const places = [
    ...(named ? [named] : []),
    '/usr/bin/chromium-headless-shell',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ];
  return places.find((place) => existsSync(place)) ?? null;
}
