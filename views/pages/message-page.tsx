import { Layout } from '../layout.tsx';

/** A page that says one thing in words: what went wrong, and where to go from there. */
export function MessagePage(props: {
  readonly title: string;
  readonly sentences: readonly string[];
  readonly back?: { readonly href: string; readonly words: string };
}): JSX.Element {
  const back = props.back ?? { href: '/jobs', words: 'To the list of jobs' };
  return (
    <Layout title={props.title}>
      <main id="main" class="plain">
        <h1 safe>{props.title}</h1>
        {props.sentences.map((sentence) => (
          <p safe>{sentence}</p>
        ))}
        <p>
          <a href={back.href} safe>
            {back.words}
          </a>
        </p>
      </main>
    </Layout>
  );
}
