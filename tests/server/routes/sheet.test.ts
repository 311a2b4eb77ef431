import { describe, expect, it } from 'vitest';
import { readPdf, textOf } from '../pdf/read-pdf.ts';
import { smallJob } from '../small-job.ts';
import { testApp } from '../test-app.ts';

describe('the sheet of a job', () => {
  it('is a page with all its sections and a way to the PDF of the same choices', async () => {
    const { app, id } = await testApp();
    const page = await app.inject(`/jobs/${id}/sheet?units=si&paper=letter`);
    expect(page.statusCode).toBe(200);
    expect(page.headers['content-type']).toMatch(/^text\/html/);
    expect(page.body.match(/<h2 /g)).toHaveLength(11);
    expect(page.body).toContain(`/jobs/${id}/sheet.pdf?scheme=S1&units=si&paper=letter`);
  });

  it('is a PDF under a safe name, of the same bytes each time', async () => {
    const { app, id } = await testApp(JSON.stringify({ ...smallJob, name: '../"Ärger"\u2028 <b>; x' }));
    const [one, other] = [
      await app.inject(`/jobs/${id}/sheet.pdf`),
      await app.inject(`/jobs/${id}/sheet.pdf`),
    ];
    expect(one.statusCode).toBe(200);
    expect(one.headers['content-type']).toBe('application/pdf');
    expect(one.headers['content-disposition']).toMatch(
      /^inline; filename="[A-Za-z0-9][A-Za-z0-9 ._-]*\.pdf"$/,
    );
    expect(one.rawPayload.subarray(0, 5).toString()).toBe('%PDF-');
    expect(one.rawPayload.equals(other.rawPayload)).toBe(true);
    const [first] = await readPdf(one.rawPayload);
    expect(textOf(first!)).toContain('2026-11-25');
  });

  it('takes the job’s own where a choice is none, and says so where the layout or the job is none', async () => {
    const { app, id } = await testApp();
    const own = await app.inject(`/jobs/${id}/sheet?units=cubits&paper=papyrus`);
    expect(own.statusCode).toBe(200);
    expect(own.body).toContain('units=us&paper=letter');
    const layout = await app.inject(`/jobs/${id}/sheet?scheme=none`);
    expect(layout.statusCode).toBe(409);
    expect(layout.body).toContain('No sheet can be made');
    for (const ending of ['sheet', 'sheet.pdf']) {
      expect((await app.inject(`/jobs/nobody/${ending}`)).statusCode).toBe(404);
    }
  });
});
