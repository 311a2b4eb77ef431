import { Layout } from '../layout.tsx';

/** One thing in the bin. */
export interface ThingInBin {
  /** Address before `/restore` and `/delete`. */
  readonly place: string;
  readonly what: string;
  readonly name: string;
  /** Days as 2026-11-25. */
  readonly deleted: string;
  readonly until: string;
}

/** What was deleted lately, with the ways back and out. */
export function BinPage({ things }: { things: readonly ThingInBin[] }): JSX.Element {
  return (
    <Layout title="Bin">
      <main id="main" class="plain">
        <h1>Bin</h1>
        <p>
          What is deleted stays here for 30 days and can be restored as it was. Then it is deleted for good.
        </p>
        {things.length === 0 ? (
          <p>The bin is empty.</p>
        ) : (
          <ul class="jobs">
            {things.map((thing) => (
              <li>
                <span class="job-name" safe>
                  {thing.name}
                </span>
                <span class="job-answer" safe>
                  {`${thing.what}, deleted ${thing.deleted}, kept until ${thing.until}`}
                </span>
                <span class="job-links actions">
                  <form method="post" action={`${thing.place}/restore`}>
                    <button type="submit" class="act">
                      Restore<span class="visually-hidden" safe>{` ${thing.name}`}</span>
                    </button>
                  </form>
                  <details>
                    <summary>
                      Delete for good<span class="visually-hidden" safe>{`: ${thing.name}`}</span>
                    </summary>
                    <form method="post" action={`${thing.place}/delete`}>
                      <p>It cannot be had back then.</p>
                      <button type="submit">
                        Delete it for good<span class="visually-hidden" safe>{`: ${thing.name}`}</span>
                      </button>
                    </form>
                  </details>
                </span>
              </li>
            ))}
          </ul>
        )}
      </main>
    </Layout>
  );
}
