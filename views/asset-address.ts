let folder = '/assets/';

/**
 * Says where the style sheets and scripts are served from. The server calls it once, when it starts, with a folder
 * whose name holds a fingerprint of all of them, so that a browser may keep them for good.
 */
export function serveAssetsFrom(address: string): void {
  folder = address;
}

/** Address of a file of `views/assets`. */
export function assetAddress(file: string): string {
  return `${folder}${file}`;
}
