import type { TestProject } from 'vitest/node';
import { makeCluster } from './cluster.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The database that stores are made in; the tests of SQLite have none. */
    postgres: string;
  }
}

/** One cluster for all test files of a run. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const cluster = await makeCluster();
  project.provide('postgres', cluster.address);
  return cluster.remove;
}
