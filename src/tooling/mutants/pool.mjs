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
    this.child = fork(WORKER, [JSON.stringify(this.config)], { stdio: ["ignore", "ignore", "pipe", "ipc"] });
    this.errors = "";
    this.child.stderr.on("data", (data) => (this.errors = (this.errors + data).slice(-2000)));
    this.ready = new Promise((resolve, reject) => {
      this.child.once("message", ({ ready }) => resolve(ready));
      this.child.once("exit", (code) => reject(new Error(`A test process ended with code ${code}. ${this.errors}`)));
    });
  }

  stop() {
    this.child.removeAllListeners();
    this.child.kill("SIGKILL");
  }

  /** @returns what the worker answered, or undefined when a test file took longer than `limit(file)` milliseconds */
  async run(job, limit) {
    await this.ready;
    const answer = await new Promise((resolve, reject) => {
      let timer;
      const settled = (settle, value) => {
        clearTimeout(timer);
        this.child.removeAllListeners();
        settle(value);
      };
      this.child.on("exit", (code) => settled(reject, new Error(`A test process ended with code ${code}. ${this.errors}`)));
      this.child.on("message", (message) => {
        if (message.problem) return settled(reject, new Error(message.problem));
        if (message.outcomes) return settled(resolve, message);
        clearTimeout(timer);
        timer = setTimeout(() => settled(resolve, undefined), limit(message.started));
      });
      this.child.send(job);
    });
    if (answer === undefined || answer.wornOut) {
      this.stop();
      this.start();
    }
    return answer?.outcomes;
  }
}

export class Pool {
  constructor(config) {
    this.workers = Array.from({ length: availableParallelism() }, () => new Worker(config));
  }

  testFiles() {
    return this.workers[0].ready;
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
