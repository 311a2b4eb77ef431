import { describe, expect, it } from 'vitest';
import type { Question } from '../../../engine/takeoff/question.ts';
import { questionText } from '../../../views/text/question-text.ts';

/** One of each code; a new code without a sentence fails to compile. */
const each: { readonly [code in Question['code']]: Extract<Question, { code: code }> } = {
  'tee-not-drawn': { code: 'tee-not-drawn', run: 'R1', from: 'R0' },
  'tee-without-junction': { code: 'tee-without-junction', run: 'R1', legs: 2 },
  'straight-unclear': { code: 'straight-unclear', run: 'R1', taken: 'R2' },
  'stop-not-drawn': { code: 'stop-not-drawn', run: 'R1', fixture: 'LAV' },
  'shared-inlet': { code: 'shared-inlet', run: 'R1', fixture: 'LAV', count: 3 },
  'open-end': { code: 'open-end', run: 'R1' },
  'ports-short': { code: 'ports-short', run: 'R1', ports: 4, lines: 6 },
  'mixing-valve-inlet': { code: 'mixing-valve-inlet', run: 'R1' },
  'no-support-spacing': { code: 'no-support-spacing', run: 'R1', material: 'pe', size: '1' },
};

describe('what a take-off asks', () => {
  it.each(Object.values(each))('is one sentence that names its run and every figure: $code', (question) => {
    const text = questionText(question);
    expect(text).toMatch(/^[A-Z0-9].*[^.]\.$/);
    const { code: _code, ...facts } = question;
    for (const [name, fact] of Object.entries(facts)) {
      if (name !== 'material') expect(text).toContain(`${fact}`);
    }
  });

  it('says one leg as one', () => {
    expect(questionText({ code: 'tee-without-junction', run: 'R1', legs: 1 })).toBe(
      'In R1 a leg of a tee is drawn where no tee is; not counted.',
    );
  });
});
