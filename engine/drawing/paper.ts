/**
 * What is free for a drawing on paper, points: the part that Letter and A4 share, upright and across, less a margin
 * of half an inch and the head of a page.
 */
export const paper = {
  across: { width: 720, height: 470 },
  upright: { width: 523, height: 650 },
} as const;

/** How much smaller a drawing has to be to fit on one sheet, the better way round; more than 1 where it has room. */
export function fitOnPaper(width: number, height: number): number {
  return Math.max(...Object.values(paper).map((free) => Math.min(free.width / width, free.height / height)));
}
