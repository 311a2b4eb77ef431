import { Layout } from '../layout.tsx';

/** Asks before a job is put into the bin. */
export function DeleteJobPage({ id, name }: { id: string; name: string }): JSX.Element {
  return (
    <Layout title="Delete a job">
      <main id="main" class="plain">
        <h1>Delete a job</h1>
        <p safe>{`“${name}” goes to the bin, where it can be restored for 30 days.`}</p>
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
