import type { Children } from '@kitajs/html';
import { assetAddress } from './asset-address.ts';

/** htmx without inline styles and eval, which the content security policy forbids; a refused form is swapped in. */
const htmxConfig = JSON.stringify({
  includeIndicatorStyles: false,
  allowEval: false,
  selfRequestsOnly: true,
  historyCacheSize: 0,
  scrollIntoViewOnBoost: false,
  responseHandling: [
    { code: '204', swap: false },
    { code: '[23]..', swap: true },
    { code: '409', swap: true },
    { code: '422', swap: true },
    { code: '[45]..', swap: false, error: true },
  ],
});

const styleSheets = ['app.css', 'schemes.css', 'prices.css', 'take-off.css', 'drawing.css', 'sheet.css'];
const scripts = ['htmx.js', 'app.js'];

/** A whole document. */
export function Layout(props: {
  readonly title: string;
  readonly children: Children;
  readonly class?: string;
  /** Files of `views/assets` that only this page needs. */
  readonly styleSheets?: readonly string[];
  readonly scripts?: readonly string[];
}): JSX.Element {
  return (
    <>
      {'<!doctype html>'}
      <html lang="en">
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          <meta name="color-scheme" content="light dark" />
          <meta name="htmx-config" content={htmxConfig} />
          <title safe>{`${props.title} · Hightap`}</title>
          <link rel="icon" href={assetAddress('icon.svg')} type="image/svg+xml" />
          {[...styleSheets, ...(props.styleSheets ?? [])].map((file) => (
            <link rel="stylesheet" href={assetAddress(file)} />
          ))}
          {[...scripts, ...(props.scripts ?? [])].map((file) => (
            <script src={assetAddress(file)} defer></script>
          ))}
        </head>
        <body class={props.class}>
          <a class="skip" href="#main">
            Skip to the page
          </a>
          <header class="masthead">
            <a class="wordmark" href="/">
              Hightap
            </a>
            <nav aria-label="Pages">
              <a href="/jobs">Jobs</a>
              <a href="/prices">Prices</a>
            </nav>
          </header>
          {props.children as 'safe'}
          <footer class="colophon">
            <p>
              The local code and the licensed plumber decide. Hot water can scald; guard every
              cross-connection; never test pipe with more pressure than its parts are rated for.
            </p>
          </footer>
        </body>
      </html>
    </>
  );
}
