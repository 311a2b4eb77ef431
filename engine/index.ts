/** The engine's public face: a checked job in, figures, findings and explanations out. Pure; SI throughout. */
export type * from './job/job.ts';
export type { Defect, DefectCode } from './network/defect.ts';
export type { Finding, FindingCode, Mend, Rule, Severity } from './checks/finding.ts';
export type { Inlet, Network } from './network/network.ts';
export type { InletResult, LedgerLine, Report } from './network/report.ts';
export type { Solution } from './network/solution.ts';
export { buildNetwork } from './network/build-network.ts';
export { ledger } from './network/ledger.ts';
export { pathTo } from './network/path.ts';
export { report } from './report.ts';
export { solve } from './network/solve.ts';
