import { Layout } from '../layout.tsx';
import { BesideStrip } from '../parts/beside-strip.tsx';
import { Explanation, type ExplanationProps } from '../parts/explanation.tsx';

/** An explanation as a page of its own, for reading, printing and for browsers without the script. */
export function ExplainPage(props: ExplanationProps & { readonly jobName: string }): JSX.Element {
  return (
    <Layout title={props.title} class="explain-page">
      <main id="main" class="plain">
        <p>
          <a href={`/jobs/${props.job}`} safe>{`Back to ${props.jobName}`}</a>
        </p>
        <BesideStrip job={props.job} />
        <div id="explain">
          <Explanation {...props} />
        </div>
      </main>
    </Layout>
  );
}
