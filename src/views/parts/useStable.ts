import { useCallback, useLayoutEffect, useRef } from 'react';

/**
 * The same function in every render, which calls the last one given. An input whose props are all the same is left alone: React sets
 * type and name of every input that is rendered again, and the browser then lays out the page, in every frame of a drag.
 */
export function useStable<Values extends readonly unknown[], Result>(
  call: (...values: Values) => Result,
): (...values: Values) => Result {
  const latest = useRef(call);
  useLayoutEffect(() => {
    latest.current = call;
  }, [call]);
  return useCallback((...values: Values) => latest.current(...values), []);
}
