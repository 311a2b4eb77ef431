/** Pass or short in a word and a sign, so that neither rests on colour. */
export function Verdict({ passes, short }: { passes: boolean; short: boolean }): JSX.Element {
  return (
    <span class={passes ? 'verdict pass' : 'verdict short'}>
      {short ? '▼ SHORT' : passes ? '✓ PASS' : '✕ BREAKS A RULE'}
    </span>
  );
}
