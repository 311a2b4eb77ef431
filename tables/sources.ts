import type { Source } from './table.ts';

/** Every document behind a table, a rule or a formula, once. A document of trade or makers stands without its name. */
export const sources = {
  'ipc-2018': { id: 'ipc-2018', title: 'International Plumbing Code', edition: '2018' },
  'iecc-2018': {
    id: 'iecc-2018',
    title: 'International Energy Conservation Code, residential provisions',
    edition: '2018',
    note: 'Not read itself; sections as quoted on pages of the trade.',
  },
  'iecc-2021': {
    id: 'iecc-2021',
    title: 'International Energy Conservation Code, residential provisions',
    edition: '2021',
    note: 'Not read itself; sections as quoted on pages of the trade.',
  },
  'irc-2018': { id: 'irc-2018', title: 'International Residential Code', edition: '2018' },
  'irc-2021': { id: 'irc-2021', title: 'International Residential Code', edition: '2021' },
  nspc: {
    id: 'nspc',
    title: 'National Standard Plumbing Code',
    edition: 'edition not stated on the page that was read',
  },
  'upc-2018': { id: 'upc-2018', title: 'Uniform Plumbing Code', edition: '2018' },
  'il-890': {
    id: 'il-890',
    title: 'Illinois Plumbing Code, 77 Ill. Adm. Code 890',
    edition: 'as in force when read, 2026',
  },
  'en-806-3': {
    id: 'en-806-3',
    title:
      'EN 806-3, specifications for installations inside buildings conveying water for human consumption, pipe sizing, ' +
      'simplified method',
    edition: '2006',
  },
  'peak-demand-2017': {
    id: 'peak-demand-2017',
    title: 'Peak Water Demand Study: probability estimates for efficient fixtures in residential buildings',
    edition: 'January 2017',
    note: 'Only its first pages were read; its values and its rule are from memory.',
  },
  'epa-watersense': {
    id: 'epa-watersense',
    title: 'US EPA and US DOE, WaterSense and Zero Energy Ready Home: efficient hot water delivery',
    edition: 'as published when read, 2026',
    note: 'A voluntary programme, not a code.',
  },
  'astm-b88': { id: 'astm-b88', title: 'ASTM B88, seamless copper water tube', edition: '2022' },
  'astm-f876': {
    id: 'astm-f876',
    title: 'ASTM F876/F877, crosslinked polyethylene (PEX) tubing and systems',
    edition: 'edition not stated in the prints that were read',
  },
  'astm-d2846': {
    id: 'astm-d2846',
    title: 'ASTM D2846, CPVC hot- and cold-water distribution systems',
    edition: 'edition not stated in the sheet that was read',
  },
  'astm-d2737': {
    id: 'astm-d2737',
    title: 'ASTM D2737, polyethylene (PE) plastic tubing',
    edition: 'standard itself not read',
  },
  'astm-d1785': {
    id: 'astm-d1785',
    title: 'ASTM D1785, PVC plastic pipe, schedules 40, 80 and 120',
    edition: 'standard itself not read',
  },
  'en-1057': {
    id: 'en-1057',
    title: 'EN 1057, copper and copper alloys: seamless round copper tubes for water and gas',
    edition: '2006+A1:2010',
    note: 'Standard itself not read; sizes as quoted in secondary prints.',
  },
  'en-1254-1': {
    id: 'en-1254-1',
    title: 'EN 1254-1, copper and copper alloys: fittings for soldering or brazing to copper tubes',
    edition: 'standard itself not read',
  },
  'en-iso-15875': {
    id: 'en-iso-15875',
    title: 'EN ISO 15875, plastics piping systems for hot and cold water: crosslinked polyethylene (PE-X)',
    edition: 'standard itself not read',
  },
  'en-iso-21003': {
    id: 'en-iso-21003',
    title: 'EN ISO 21003, multilayer piping systems for hot and cold water inside buildings',
    edition: 'standard itself not read',
  },
  'asme-b36.10m': {
    id: 'asme-b36.10m',
    title: 'ASME B36.10M, welded and seamless wrought steel pipe',
    edition: 'standard itself not read',
  },
  'asme-b16.3': {
    id: 'asme-b16.3',
    title: 'ASME B16.3, malleable iron threaded fittings',
    edition: 'standard itself not read',
  },
  'asme-b16.22': {
    id: 'asme-b16.22',
    title: 'ASME B16.18/B16.22, copper solder-joint pressure fittings',
    edition: 'edition not stated in the table that was read',
  },
  'pex-design-manual-a': {
    id: 'pex-design-manual-a',
    title: "Manufacturer's manual A, PEX systems, design",
    edition: '2014',
  },
  'pex-manual-a': {
    id: 'pex-manual-a',
    title: "Manufacturer's manual A, PEX insert and press systems, installation",
    edition: 'April 2016',
  },
  'pex-manual-b': {
    id: 'pex-manual-b',
    title: "Manufacturer's manual B, PEX cold-expansion systems, design",
    edition: '4th edition, 2015',
  },
  'cpvc-guide': {
    id: 'cpvc-guide',
    title: "Manufacturer's guide, CPVC copper-tube-size installation",
    edition: 'January 2013',
  },
  'plastic-pipe-manual': {
    id: 'plastic-pipe-manual',
    title: 'PVC and CPVC pipe engineering manual',
    edition: 'edition not stated in the copies that were read',
  },
  'copper-tube-sheet': {
    id: 'copper-tube-sheet',
    title: 'Piping data sheet, copper tube type L: sizes, weights and stock lengths',
    edition: 'as read in 2026',
  },
  'navy-plumbing-manual': {
    id: 'navy-plumbing-manual',
    title: 'US Navy training manual, copper tube: stock lengths by type',
    edition: 'edition not stated on the page that was read',
  },
  'pipe-data-page': {
    id: 'pipe-data-page',
    title: 'Engineering reference pages: Hazen-Williams coefficients, roughness and loss coefficients',
    edition: 'as read in 2026',
  },
  'meter-loss-sheet': {
    id: 'meter-loss-sheet',
    title: 'Water meters, AWWA standard pressure loss (psi): one-page sheet with equivalent lengths',
    edition: 'undated, author not stated',
    note: 'Read in a copy; the standard that its title names was not seen.',
  },
  'reducing-valve-sheet': {
    id: 'reducing-valve-sheet',
    title: "Manufacturer's data sheet, pressure-reducing valves",
    edition: 'undated',
  },
  'backflow-training-page': {
    id: 'backflow-training-page',
    title: 'Compliance-training pages on backflow assemblies, ASSE 1012 and 1013',
    edition: 'as read in 2026',
  },
  'nsf-44': {
    id: 'nsf-44',
    title: 'NSF/ANSI 44, residential cation exchange water softeners',
    edition: "standard itself not read; read in a certifier's article of 2014",
  },
  'pdi-wh-201': {
    id: 'pdi-wh-201',
    title: 'PDI-WH 201, water hammer arresters',
    edition: 'standard itself not read',
  },
  'iapws-if97': {
    id: 'iapws-if97',
    title: 'IAPWS-IF97 industrial formulation, with the IAPWS viscosity release',
    edition: '2007 revision and 2008 release',
  },
  'darcy-weisbach': {
    id: 'darcy-weisbach',
    title: 'Darcy-Weisbach equation, laminar friction 64/Re and local losses K v²/2g',
    edition: 'Weisbach 1845, Darcy 1857',
  },
  'colebrook-1939': {
    id: 'colebrook-1939',
    title:
      'C. F. Colebrook, Turbulent flow in pipes, with particular reference to the transition region between the ' +
      'smooth and rough pipe laws, Journal of the Institution of Civil Engineers 11, 133-156',
    edition: '1939',
  },
  'nfpa-291': {
    id: 'nfpa-291',
    title: 'NFPA 291, water flow testing and marking of hydrants: flow goes as pressure drop to the 0.54',
    edition: 'standard itself not read',
  },
  continuity: {
    id: 'continuity',
    title: 'Continuity of an incompressible fluid: flow = area × velocity',
    edition: '',
  },
  hydrostatics: {
    id: 'hydrostatics',
    title: 'Hydrostatics: pressure = density × gravity × height',
    edition: '',
  },
  'trade-practice': {
    id: 'trade-practice',
    title: 'Common practice of the trade',
    edition: '',
  },
  job: {
    id: 'job',
    title: "The job's own limit",
    edition: '',
  },
  'job-table': {
    id: 'job-table',
    title: "The job's own table",
    edition: '',
  },
  arithmetic: { id: 'arithmetic', title: 'Plain arithmetic', edition: '' },
  hightap: {
    id: 'hightap',
    title: "This project's own rule",
    edition: '',
    note: 'No code asks for it; it says where the computation should be looked at again.',
  },
  'standard-font-metrics': {
    id: 'standard-font-metrics',
    title: 'Font metrics files of the 14 standard PDF fonts: Helvetica and Helvetica Bold',
    edition: 'version 2.000, 1997',
  },
} as const satisfies Record<string, Source>;
