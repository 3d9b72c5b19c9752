export type Row = Readonly<Record<string, unknown>>;

/** Runs one statement. Parameters are `$1`, `$2` in every database. */
export type Run = (sql: string, parameters: readonly unknown[]) => Promise<readonly Row[]>;

/** Runs one insert, "insert ... values ($1, ...)", for each row of parameters, in their order. */
export type RunEach = (sql: string, rows: readonly (readonly unknown[])[]) => Promise<void>;

/**
 * The little that a database has to offer a store: statements, and transactions that nothing else gets in between.
 *
 * What `transaction` did is on the disk for good once it answers. Its work is given a mark, another one whenever anybody else
 * wrote: what was read under the same mark still holds. Its tables refuse changes and removals themselves.
 */
export interface Database {
  readonly query: Run;
  transaction<Result>(work: (run: Run, each: RunEach, mark: unknown) => Promise<Result>): Promise<Result>;
  close(): Promise<void>;
}
