import type { Children } from '@kitajs/html';
import { readAddress } from '../job-address.ts';

/** What stands here can be read and not be changed where the address is that of an earlier revision. */
export function ReadOnly(props: { readonly job: string; readonly children: Children }): JSX.Element {
  if (!isPast(props.job)) return props.children as JSX.Element;
  return (
    <fieldset class="read-only" disabled>
      {props.children as 'safe'}
    </fieldset>
  );
}

/** Whether an address is that of an earlier revision, which nothing changes. */
export function isPast(job: string): boolean {
  return readAddress(job).at === 'revision';
}
