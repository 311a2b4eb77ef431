import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { optionalQuantity, quantity, withFieldUnit } from '../../../server/forms/fields.ts';
import { formFields } from '../../../server/forms/form-fields.ts';
import { readForm } from '../../../server/forms/read-form.ts';

describe('withFieldUnit', () => {
  it.each([
    ['18', '18 ft'],
    ['-4.5', '-4.5 ft'],
    ['6-1/2', '6-1/2 ft'],
    ['18 m', '18 m'],
    ['12\'-6"', '12\'-6"'],
    ['', ''],
    ['abc', 'abc'],
  ])('%s becomes %s', (typed, expected) => {
    expect(withFieldUnit(typed, 'ft')).toBe(expected);
  });
});

describe('a quantity field', () => {
  const form = z.object({ length: quantity('length', 'ft'), rise: optionalQuantity('length', 'ft') });

  it('keeps the unit that a bare number took', () => {
    expect(readForm(form, { length: '10', rise: '' })).toEqual({
      ok: true,
      value: { length: { typed: '10 ft', si: 3.048 }, rise: undefined },
    });
  });

  it('names what came where it does not do', () => {
    const result = readForm(form, { length: '62 psi' });
    expect(result).toMatchObject({ ok: false, problems: { length: expect.stringContaining('62 psi') } });
  });

  it.each(['NaN', '1e308', 'Infinity', '1e9', '', '--1'])('refuses %s', (length) => {
    expect(readForm(form, { length }).ok).toBe(false);
  });
});

describe('formFields', () => {
  it('takes the last of several values, and text only', () => {
    expect(formFields({ a: ['1', '2'], b: 'x', c: 3, d: {} })).toEqual({ a: '2', b: 'x' });
    expect(formFields(null)).toEqual({});
    expect(formFields('text')).toEqual({});
  });

  it('reads a field called __proto__ as any other', () => {
    const fields = formFields(JSON.parse('{"__proto__": "x", "a": "1"}'));
    expect(Object.getPrototypeOf(fields)).toBe(Object.prototype);
    expect(fields.a).toBe('1');
  });
});
