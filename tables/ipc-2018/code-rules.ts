import type { CodeRules } from '../profile.ts';
import { sources } from '../sources.ts';

const source = sources['ipc-2018'];
const checkedOn = '2026-11-25';

/** Sections of the code that findings cite and that have no value of their own. */
export const codeRules: CodeRules = {
  thermalExpansion: { source, at: { section: '607.3', checkedOn }, verified: 'seen-secondary' },
  waterHammer: { source, at: { section: '604.9', checkedOn }, verified: 'memory' },
  mainShutOff: { source, at: { section: '606.1', checkedOn }, verified: 'memory' },
  outdoorShutOff: { source, at: { section: '606.2', checkedOn }, verified: 'memory' },
  manifoldShutOff: { source, at: { section: '604.10.2', checkedOn }, verified: 'memory' },
  hoseConnection: { source, at: { section: '608.15.4.2', checkedOn }, verified: 'memory' },
  makeUp: { source, at: { section: '608.16.2', checkedOn }, verified: 'memory' },
  rating: { source, at: { section: '605', checkedOn }, verified: 'memory' },
  hotMaterial: { source, at: { section: '605.4', checkedOn }, verified: 'memory' },
};
