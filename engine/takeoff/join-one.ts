import { metricSize } from '../hydraulics/nominal-inches.ts';
import { type Article, fitsAlike, type Pipe, partOf } from './article.ts';

/**
 * What joins a pipe to the one it goes on as: nothing where both are the same, a reducing coupling to another size, a
 * coupling to another wall of the same tube, an adapter to another material or way of joining.
 */
export function joinOne(feed: Pipe, next: Pipe): Article | undefined {
  if (!fitsAlike(feed, next)) {
    const { material, joint } = next;
    return { ...partOf('adapter', feed, [feed.size, next.size]), to: { material, joint } };
  }
  if (!isOneTube(feed.size, next.size)) return partOf('reducer', feed, [feed.size, next.size]);
  return feed.material === next.material ? undefined : partOf('coupling', feed);
}

/** Whether two sizes have one outside diameter: the same name, or metric names that differ in the wall alone. */
function isOneTube(one: string, other: string): boolean {
  return one === other || (metricSize(one)?.outside ?? one) === metricSize(other)?.outside;
}
