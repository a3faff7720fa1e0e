import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** The size in CSS pixels of the element that the ref is on, kept up to date. */
export function useSize<Kind extends Element>() {
  const ref = useRef<Kind>(null);
  const [size, setSize] = useState<{ readonly width: number; readonly height: number } | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const look = () => {
      const { width, height } = element.getBoundingClientRect();
      setSize({ width, height });
    };
    const watch = new ResizeObserver(look);
    watch.observe(element);
    look();
    return () => watch.disconnect();
  }, []);
  return { ref, size };
}
