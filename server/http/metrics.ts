import type { FastifyInstance } from 'fastify';
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';

/** Upper ends of the classes of duration, seconds: the middle is the blink in which an edit should be answered. */
const durations = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30];

export interface Metrics {
  /** All figures in the open text format. */
  readonly text: () => Promise<string>;
  readonly type: string;
  /** Adds a figure that is read when the text is made. */
  readonly gauge: (name: string, help: string, read: () => number) => void;
}

/** Counts every answer of an app by route, never by address or person; process figures beside them. */
export function measure(app: FastifyInstance): Metrics {
  const registry = new Registry();
  collectDefaultMetrics({ register: registry, prefix: 'hightap_' });
  const labelNames = ['method', 'route', 'status'] as const;
  const answers = new Counter({
    name: 'hightap_http_answers_total',
    help: 'Answers by method, route and class of status.',
    labelNames,
    registers: [registry],
  });
  const seconds = new Histogram({
    name: 'hightap_http_answer_seconds',
    help: 'Time from the head of a request to the end of its answer.',
    labelNames: ['method', 'route'],
    buckets: durations,
    registers: [registry],
  });
  app.addHook('onResponse', async (request, reply) => {
    const method = request.method;
    const route = request.routeOptions.url ?? 'none';
    answers.inc({ method, route, status: `${Math.floor(reply.statusCode / 100)}xx` });
    seconds.observe({ method, route }, reply.elapsedTime / 1000);
  });
  app.addHook('onClose', async () => registry.clear());
  return {
    text: () => registry.metrics(),
    type: registry.contentType,
    gauge: (name, help, read) => {
      new Gauge({
        name,
        help,
        registers: [registry],
        collect() {
          this.set(read());
        },
      });
    },
  };
}
