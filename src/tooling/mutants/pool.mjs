// Workers that run jobs from one queue. A worker that hangs is ended and replaced.
import { fork } from "node:child_process";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";

const WORKER = fileURLToPath(new URL("worker.js", import.meta.url));

class Worker {
  constructor(config) {
    this.config = config;
    this.start();
  }

  start() {
    const child = fork(WORKER, [JSON.stringify(this.config)], { stdio: ["ignore", "ignore", "pipe", "ipc"] });
    let errors = "";
    child.stderr.on("data", (data) => (errors = (errors + data).slice(-2000)));
    this.child = child;
    this.hear = () => {};
    this.ended = new Promise((_resolve, reject) => {
      child.once("exit", (code, signal) => reject(new Error(`A test process ended with ${signal ?? `code ${code}`}. ${errors}`)));
    });
    // Whoever waits for an answer hears of the end; nobody may be waiting.
    this.ended.catch(() => {});
    child.on("message", (message) => this.hear(message));
    this.ready = Promise.race([this.ended, new Promise((resolve) => (this.hear = resolve))]);
    this.ready.catch(() => {});
  }

  stop() {
    this.hear = () => {};
    this.child.kill("SIGKILL");
  }

  /** @returns what the worker answered, or undefined when a test file took longer than `limit(file)` milliseconds */
  async run(job, limit) {
    await this.ready;
    const { child } = this;
    let timer;
    const answered = new Promise((resolve, reject) => {
      this.hear = ({ started, outcomes, problem, wornOut }) => {
        clearTimeout(timer);
        if (problem !== undefined) reject(new Error(problem));
        else if (outcomes !== undefined) resolve({ outcomes, wornOut });
        else timer = setTimeout(resolve, limit(started), {});
      };
    });
    child.send(job);
    const { outcomes, wornOut } = await Promise.race([this.ended, answered]);
    if (outcomes === undefined || wornOut) {
      this.stop();
      this.start();
    }
    return outcomes;
  }
}

export class Pool {
  constructor(config) {
    this.workers = Array.from({ length: availableParallelism() }, () => new Worker(config));
  }

  /** Runs `perform(run, item)` for every item, each on the next free worker, in order. */
  async each(items, perform) {
    const left = [...items];
    const drain = async (worker) => {
      for (let item = left.shift(); item !== undefined; item = left.shift()) await perform((job, limit) => worker.run(job, limit), item);
    };
    await Promise.all(this.workers.map(drain));
  }

  close() {
    for (const worker of this.workers) worker.stop();
  }
}
