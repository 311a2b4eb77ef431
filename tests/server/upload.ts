const boundary = 'edge-of-part';

/** What a browser sends for a form with one file, as options of `inject`. */
export function upload(url: string, content: string | Buffer, filename = 'a.csv') {
  const head = `--${boundary}\r\ncontent-disposition: form-data; name="file"; filename="${filename}"\r\ncontent-type: application/octet-stream\r\n\r\n`;
  return {
    method: 'POST' as const,
    url,
    headers: { 'content-type': `multipart/form-data; boundary=${boundary}` },
    payload: Buffer.concat([Buffer.from(head), Buffer.from(content), Buffer.from(`\r\n--${boundary}--\r\n`)]),
  };
}
