/** Dates and times. Day 1 is 1 January 1900, and 29 February 1900, which never was, is counted as day 60. */

import { type BaseValueObject, ErrorType, type IFunctionService, NumberValueObject } from '@univerjs/engine-formula';
import { amend, errorIn, faulty, lifted, numberOf, OneByOne } from './amend.ts';

/** Serial number of 1 January 1970. */
const UNIX_EPOCH = 25_569;
const DAY_THAT_NEVER_WAS = 60;
const LEAP_DAY = 29;
const MILLISECONDS_OF_A_DAY = 86_400_000;
const SECONDS_OF_A_DAY = 86_400;
/** 31 December 9999. */
const LAST_DAY = 2_958_465;
const LAST_YEAR = 9999;
const FIRST_YEAR = 1900;

/** The same day so many months later, or the last day of that month where it has fewer days. */
export function monthsLater(serial: number, months: number): number {
  const day = Math.floor(serial);
  const unixDay = (day < DAY_THAT_NEVER_WAS ? day + 1 : day) - UNIX_EPOCH;
  const date = new Date(unixDay * MILLISECONDS_OF_A_DAY);
  const year = date.getUTCFullYear();
  const month = date.getUTCMonth() + months;
  const lastDay = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  const target = Date.UTC(year, month, Math.min(date.getUTCDate(), lastDay));
  const result = target / MILLISECONDS_OF_A_DAY + UNIX_EPOCH;
  return result <= DAY_THAT_NEVER_WAS ? result - 1 : result;
}

function later(start: BaseValueObject, months: BaseValueObject): BaseValueObject {
  const error = errorIn([start, months]);
  if (error !== undefined) return error;
  if (start.isBoolean() || months.isBoolean()) return faulty(ErrorType.VALUE);
  const [serial, count] = [numberOf(start), numberOf(months)];
  if (Number.isNaN(serial) || Number.isNaN(count)) return faulty(ErrorType.VALUE);
  if (!(serial >= 0)) return faulty(ErrorType.NUM);
  const result = monthsLater(serial, Math.trunc(count));
  return result >= 0 && result <= LAST_DAY ? NumberValueObject.create(result) : faulty(ErrorType.NUM);
}

/** The day of a year, month and day, which may each be too large or too small. NaN where there is no such day. */
export function daySerial(year: number, month: number, day: number): number {
  const fullYear = year < FIRST_YEAR ? year + FIRST_YEAR : year;
  if (!(year >= 0 && fullYear <= LAST_YEAR)) return Number.NaN;
  const first = Date.UTC(fullYear, Math.trunc(month) - 1, 1) / MILLISECONDS_OF_A_DAY + UNIX_EPOCH;
  const serial = (first <= DAY_THAT_NEVER_WAS ? first - 1 : first) + Math.trunc(day) - 1;
  return serial >= 0 && serial <= LAST_DAY ? serial : Number.NaN;
}

/** A text that reads as a date or time, as its number. */
function dated(value: BaseValueObject): BaseValueObject {
  if (!value.isString()) return value;
  const number = numberOf(value);
  return Number.isNaN(number) ? value : NumberValueObject.create(number);
}

const DATED: readonly string[] = [
  ...['WEEKDAY', 'WEEKNUM', 'ISOWEEKNUM', 'EOMONTH', 'DAYS', 'DAYS360', 'DATEDIF', 'YEARFRAC', 'NETWORKDAYS'],
  ...['NETWORKDAYS.INTL', 'WORKDAY', 'WORKDAY.INTL', 'HOUR', 'MINUTE'],
];

const isBeyond = (value: BaseValueObject): boolean => value.isNumber() && !(Number(value.getValue()) < LAST_DAY + 1);

/** A time as part of a day; hours, minutes and seconds may each be too large, or too small as long as the time is not. */
function timeOf(...parts: BaseValueObject[]): number {
  const [hours = 0, minutes = 0, seconds = 0] = parts.map((part) => Math.trunc(numberOf(part)));
  const total = hours * 3600 + minutes * 60 + seconds;
  return total >= 0 ? (total % SECONDS_OF_A_DAY) / SECONDS_OF_A_DAY : Number.NaN;
}

const secondOf = (serial: number): number => Math.round((serial - Math.floor(serial)) * SECONDS_OF_A_DAY) % 60;

/**
 * As shipped EDATE runs over the end of a short month (one month after 31 January is 3 March), DATE and DAY do not know 29 February 1900, DATE does
 * not take the year 1899 for 3799, days after the year 9999 have a year, few functions read a date such as "15 Mar 2023", TIME refuses minutes below 0, and SECOND cuts parts of a second off.
 */
export function repairDates(service: IFunctionService): void {
  service.registerExecutors(new OneByOne('EDATE', 2, 2, later));
  amend(
    service,
    'DATE',
    (shipped) =>
      (...values) =>
        lifted(values, (...parts) => {
          const answer = shipped(...parts);
          const [year = 0, month = 0, day = 0] = parts.map(numberOf);
          if (errorIn(parts) !== undefined || [year, month, day].some(Number.isNaN)) return answer;
          const serial = daySerial(Math.trunc(year), month, day);
          if (Number.isNaN(serial)) return faulty(ErrorType.NUM);
          return NumberValueObject.create(serial, answer.getPattern());
        }),
  );
  for (const name of ['YEAR', 'MONTH'])
    amend(
      service,
      name,
      (shipped) => (value) =>
        lifted([value], (one) => (isBeyond(dated(one)) ? faulty(ErrorType.NUM) : shipped(dated(one)))),
    );
  for (const name of DATED)
    amend(
      service,
      name,
      (shipped) =>
        (...values) =>
          shipped(...values.map((value) => (value.isString() ? dated(value) : value))),
    );
  amend(
    service,
    'TIME',
    (shipped) =>
      (...values) =>
        lifted(values, (...parts) => {
          const answer = shipped(...parts);
          if (errorIn(parts) !== undefined || parts.some((part) => Number.isNaN(numberOf(part)))) return answer;
          const time = timeOf(...parts);
          return Number.isNaN(time) ? faulty(ErrorType.NUM) : NumberValueObject.create(time, answer.getPattern());
        }),
  );
  amend(
    service,
    'DAY',
    (shipped) => (value) =>
      lifted([value], (one) => {
        const date = dated(one);
        if (isBeyond(date)) return faulty(ErrorType.NUM);
        const isLeapDay = date.isNumber() && Math.floor(Number(date.getValue())) === DAY_THAT_NEVER_WAS;
        return isLeapDay ? NumberValueObject.create(LEAP_DAY) : shipped(date);
      }),
  );
  amend(
    service,
    'SECOND',
    (shipped) => (value) =>
      lifted([value], (one) => {
        const serial = one.isNumber() ? Number(one.getValue()) : Number.NaN;
        return serial >= 0 ? NumberValueObject.create(secondOf(serial)) : shipped(one);
      }),
  );
}
