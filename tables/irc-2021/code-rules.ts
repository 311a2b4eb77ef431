import type { CodeRules } from '../profile.ts';
import { sources } from '../sources.ts';

const source = sources['irc-2021'];
const checkedOn = '2026-11-25';

/** Sections of the code that findings cite and that have no value of their own. */
export const codeRules: CodeRules = {
  thermalExpansion: { source, at: { section: 'P2903.4', checkedOn }, verified: 'seen-secondary' },
  waterHammer: { source, at: { section: 'P2903.5', checkedOn }, verified: 'seen-secondary' },
  mainShutOff: { source, at: { section: 'P2903.9.1', checkedOn }, verified: 'memory' },
  outdoorShutOff: { source, at: { section: 'P2903.10', checkedOn }, verified: 'memory' },
  manifoldShutOff: { source, at: { section: 'P2903.8.5', checkedOn }, verified: 'memory' },
  hoseConnection: { source, at: { section: 'P2902.4.3', checkedOn }, verified: 'memory' },
  makeUp: { source, at: { section: 'P2902.5.1', checkedOn }, verified: 'memory' },
  rating: { source, at: { section: 'P2906', checkedOn }, verified: 'memory' },
  hotMaterial: { source, at: { section: 'P2906.5', checkedOn }, verified: 'memory' },
};
