/**
 * The engine (0.25.1) opens a message channel for every 500 formulas and, where a calculation is stopped, never closes it, which keeps Node from
 * ending. Notes the channels that are opened from now on.
 * @returns closes them, once nothing calculates any more
 */
export function channelsLeftOpen(): () => void {
  const Original = globalThis.MessageChannel;
  const opened: MessageChannel[] = [];
  class NotedChannel extends Original {
    constructor() {
      super();
      opened.push(this);
    }
  }
  globalThis.MessageChannel = NotedChannel;
  return () => {
    if (globalThis.MessageChannel === NotedChannel) globalThis.MessageChannel = Original;
    for (const { port1, port2 } of opened.splice(0)) {
      port1.close();
      port2.close();
    }
  };
}
