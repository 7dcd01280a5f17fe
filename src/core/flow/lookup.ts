/** Finds flows, places and functions by name; a name that is not there is a programmer's mistake. */
import type { Flow, FlowBook, FrontRules, Place } from './book.ts';

export function flowNamed(book: FlowBook, name: string): Flow {
  const flow = book.flows[name];
  if (!flow) throw new Error(`no flow is called "${name}"`);
  return flow;
}

export function placeNamed(flow: Flow, name: string): Place {
  const place = flow.places[name];
  if (!place) throw new Error(`${flow.name} has no place "${name}"`);
  return place;
}

export function frontRules(book: FlowBook): FrontRules {
  const { front } = flowNamed(book, book.front);
  if (!front) throw new Error(`"${book.front}" has no front rules`);
  return front;
}

export function callNamed(book: FlowBook, name: string): FlowBook['calls'][string] {
  const call = book.calls[name];
  if (!call) throw new Error(`no function is called "${name}"`);
  return call;
}
