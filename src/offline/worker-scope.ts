/** The little of a service worker's world that ours uses: the page's own type library does not hold it. */

export interface ExtendableEvent extends Event {
  waitUntil: (done: Promise<unknown>) => void;
}

export interface FetchEvent extends ExtendableEvent {
  readonly request: Request;
  respondWith: (response: Promise<Response>) => void;
}

export interface WorkerMessage extends ExtendableEvent {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
}

export interface WorkerScope {
  readonly location: Location;
  skipWaiting: () => Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: ExtendableEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
  addEventListener(type: 'message', listener: (event: WorkerMessage) => void): void;
}
