import { isFault, type Result } from '../result.ts';

/** What follows from a result: a fault goes on as it is. */
export const follow = <A, B>(from: Result<A>, next: (value: A) => Result<B>): Result<B> =>
  isFault(from) ? from : next(from);

/** What follows from two results: the first fault of them goes on as it is. */
export const followBoth = <A, B, C>(a: Result<A>, b: Result<B>, next: (a: A, b: B) => Result<C>): Result<C> => {
  if (isFault(a)) return a;
  return isFault(b) ? b : next(a, b);
};
