import type { ComparedScheme, Job, PriceBook } from '../../engine/index.ts';
import { toSI } from '../../tables/units/definitions.ts';
import { defectText } from '../../views/text/defect-text.ts';
import { bookJson } from './book-json.ts';
import type { Comparison } from './comparison.ts';
import { findingJson } from './finding-json.ts';
import { countsOf } from './findings-count.ts';
import type { CompareAnswer, SchemeAnswer } from './schema-compare.ts';

/** The comparison for programs: SI, unrounded; money as decimals in strings, in the currency of `prices`. */
export function compareJson({ job, compared, broken, unsized }: Comparison, book: PriceBook): CompareAnswer {
  return {
    format: 'hightap-compare',
    version: 1,
    job: job.name,
    prices: bookJson(book),
    sized: unsized !== undefined,
    schemes: compared.map((scheme) => ({
      ...schemeJson(scheme, job),
      ...(unsized === undefined ? {} : { fits: !unsized.has(scheme.id) }),
    })),
    broken: broken.map(({ id, name, defects }) => ({
      id,
      name,
      defects: defects.map((defect) => defectText(defect, job.units)),
    })),
  };
}

function schemeJson({ id, name, report, price, longestWait: wait }: ComparedScheme, job: Job): SchemeAnswer {
  const { worst } = report;
  return {
    id,
    name,
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
    price: {
      total: price.total === undefined ? null : price.total.money.toFixed(2),
      pipe: price.priced.pipe.toFixed(),
      fittings: price.priced.fittings.toFixed(),
      devices: price.priced.devices.toFixed(),
      missing: price.missing,
    },
    labor_h: price.priced.hours,
    pipe: price.feet.map(({ material, size, feet }) => ({
      material,
      size,
      length_m: toSI(feet.toNumber(), 'ft'),
    })),
    fittings: price.fittings,
    longestHotWait:
      wait === undefined
        ? null
        : {
            fixture: wait.inlet.fixture.id,
            length_m: wait.length,
            volume_m3: wait.volume,
            wait_s: wait.seconds,
          },
    counts: countsOf(report.findings),
    findings: report.findings.map((finding) => findingJson(finding, job)),
  };
}
