import { useEffect, useState } from 'preact/hooks';
import { bringFiles } from './keeping/bring.ts';
import { profilingFor } from './keeping/profiling.ts';
import { doAgain, takeBack } from './keeping/takingBack.ts';
import { photograph } from './keeping/tracing.ts';
import { BuildStop } from './stops/BuildStop.tsx';
import { NumbersStop } from './stops/NumbersStop.tsx';
import { PhotographStop } from './stops/PhotographStop.tsx';
import { ProfileStop } from './stops/ProfileStop.tsx';
import { SeeingStop } from './stops/SeeingStop.tsx';
import { TakeAwayStop } from './stops/TakeAwayStop.tsx';
import { stop } from './store.ts';
import { Way } from './way/Way.tsx';
import { language, words } from './words/words.ts';

/** The whole page: the way, the drawing, the notebook. */
export function Page() {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    document.documentElement.lang = language.value;
    document.title = words().title;
  }, [language.value]);
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const isTyping = event.target instanceof HTMLInputElement;
      if (!(event.ctrlKey || event.metaKey) || isTyping) return;
      if (event.key === 'z' && !event.shiftKey) {
        event.preventDefault();
        takeBack();
      } else if (event.key === 'y' || (event.key.toLowerCase() === 'z' && event.shiftKey)) {
        event.preventDefault();
        doAgain();
      }
    };
    const over = (event: DragEvent) => {
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      event.preventDefault();
      setOver(false);
      void bringFiles([...(event.dataTransfer?.files ?? [])]);
    };
    window.addEventListener('keydown', press);
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('keydown', press);
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
    };
  }, []);
  return (
    <>
      <div class="page">
        <Way />
        <StopView />
      </div>
      {isOver && <p class="drop-here">{words().bring.drop}</p>}
      <p class="on-paper">{words().cannotPrint}</p>
    </>
  );
}

function StopView() {
  switch (stop.value) {
    case 'photograph':
      return photograph.value ? <SeeingStop /> : <PhotographStop />;
    case 'takeAway':
      return <TakeAwayStop />;
    case 'build':
      return <BuildStop />;
    default:
      if (profilingFor.value === stop.value) return <ProfileStop of={profilingFor.value} />;
      return <NumbersStop key={stop.value} name={stop.value} />;
  }
}
