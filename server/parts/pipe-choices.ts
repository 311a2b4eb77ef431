import { nominalInches } from '../../engine/hydraulics/nominal-inches.ts';
import { risingSizes } from '../../engine/hydraulics/rising-sizes.ts';
import { materialWords } from '../../engine/job/words.ts';
import { pipeDimensions } from '../../tables/pipe/dimensions.ts';
import type { PipeChoices } from '../../views/parts/run-list.tsx';
import type { Workbench } from '../../views/workbench.ts';

/** The sizes in which the materials of a layout are made, and the lines that they begin. */
export function pipeChoices({ rows }: Workbench): PipeChoices {
  const materials = [...new Set(rows.map(({ run }) => run.material))];
  const made = materials.map((material) => ({
    material,
    sizes: risingSizes(pipeDimensions[material].rows),
  }));
  const sizes = new Set(made.flatMap((one) => one.sizes));
  return {
    sizes: [...sizes].sort((one, other) => nominalInches(one) - nominalInches(other)),
    openings: made.flatMap((one) => one.sizes.map((size) => `${size} ${materialWords[one.material][0]} `)),
  };
}
