import { Layout } from '../layout.tsx';

/** Asks before a job is deleted for good. */
export function DeleteJobPage({ id, name }: { id: string; name: string }): JSX.Element {
  return (
    <Layout title="Delete a job">
      <main id="main" class="plain">
        <h1>Delete a job</h1>
        <p safe>{`“${name}” will be deleted for good. Download its file first if you may want it back.`}</p>
        <form method="post" action={`/jobs/${id}/delete`} class="actions">
          <button type="submit" class="act">
            Delete it
          </button>
          <a href="/jobs">Keep it</a>
          <a href={`/jobs/${id}/file`}>Download the job file</a>
        </form>
      </main>
    </Layout>
  );
}
