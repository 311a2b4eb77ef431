import type { PriceBook, PsiPrice, SizingStudy, StudiedSizes } from '../../engine/index.ts';
import { moneyJson } from '../words/money-words.ts';
import { bookJson } from './book-json.ts';
import type { ChangeAnswer, SizeAnswer, SizesAnswer, UnsizedAnswer } from './schema-size.ts';

/** The sizing for programs: SI, unrounded; money as decimals in strings, in the currency of `prices`. */
export function sizeJson(study: SizingStudy, book: PriceBook): SizeAnswer {
  const { drawn, least, result, methods, curve, changes, missing } = study;
  const { network, solution } = drawn.report;
  const after = new Map(least?.scheme.runs.map((run) => [run.id, run]));
  return {
    format: 'hightap-size',
    version: 1,
    job: network.job.name,
    scheme: { id: network.scheme.id, name: network.scheme.name },
    prices: bookJson(book),
    supply: { pressure_Pa: solution.supplyPressure },
    fits: least !== undefined,
    drawn: sizesJson(drawn),
    least:
      least === undefined ? null : { ...sizesJson(least), need_Pa: result.ok ? result.sized.need : null },
    unsized: result.ok ? null : unsizedJson(study),
    runs: network.runs.map((run) => {
      const to = after.get(run.id);
      return {
        id: run.id,
        drawn: { size: run.size, material: run.material },
        least: to === undefined ? null : { size: to.size, material: to.material },
      };
    }),
    methods: methods.map((one) => ({
      method: one.method,
      ...sizesJson(one),
      larger: least === undefined ? null : one.larger,
      smaller: least === undefined ? null : one.smaller,
    })),
    curve: curve.map(({ street, cost }) => ({
      street_Pa: street,
      cost: cost === undefined ? null : moneyJson(cost),
    })),
    changes: changes.map(changeJson),
    missingPrices: missing,
  };
}

function sizesJson({ runs, price, report }: StudiedSizes): SizesAnswer {
  const { worst } = report;
  return {
    pipeAndFittings: runs === undefined ? null : moneyJson(runs.cost),
    labor_h: runs === undefined ? null : runs.hours,
    withDevices: price.total === undefined ? null : price.total.money.toFixed(2),
    passes: report.passes,
    worst:
      worst === undefined
        ? null
        : {
            fixture: worst.inlet.fixture.id,
            side: worst.inlet.side,
            residual_Pa: worst.residual,
            required_Pa: worst.inlet.requiredPressure,
            margin_Pa: worst.margin,
          },
  };
}

function unsizedJson({ result, remedy }: SizingStudy): UnsizedAnswer | null {
  if (result.ok) return null;
  const { unsized } = result;
  if (unsized.why === 'no-pipe') return { why: unsized.why, runs: unsized.runs };
  if (unsized.why === 'tied' || unsized.why === 'no-fixture') return { why: unsized.why };
  const street = remedy?.street;
  return {
    why: unsized.why,
    fixture: unsized.inlet.fixture.id,
    side: unsized.inlet.side,
    short_Pa: unsized.by,
    streetNeeded_Pa: street?.need ?? null,
    costThere: street === undefined ? null : moneyJson(street.cost),
    changes: (remedy?.changes ?? []).map(changeJson),
  };
}

function changeJson({ change, gain, cents }: PsiPrice): ChangeAnswer {
  return { ...change, gain_Pa: gain, cost: moneyJson(cents) };
}
