/** Ends a trial, one way or the other. */
export function TrialActions({ trial }: { readonly trial: string }): JSX.Element {
  return (
    <div class="actions">
      <form method="post" action={`/jobs/${trial}/keep`}>
        <button type="submit" class="act">
          Keep
        </button>
      </form>
      <form method="post" action={`/jobs/${trial}/drop`}>
        <button type="submit">Drop</button>
      </form>
    </div>
  );
}
