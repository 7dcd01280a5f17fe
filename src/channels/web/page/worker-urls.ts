/** Where the build puts the page's workers. */
export { default as alarmWorker } from './alarm-worker.ts?worker&url';
export { default as shellWorker } from './shell-worker.ts?worker&url';
