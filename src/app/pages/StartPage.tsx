import { useState } from 'react';
import { BringButtons } from '../parts/BringButtons.js';
import { KeptProjects } from '../parts/KeptProjects.js';
import { SampleCards } from '../parts/SampleCards.js';
import { useWorkbench } from '../state/workbench.js';

/** The empty page: bring a photo in, look at a sample, or go on with kept work. */
export function StartPage() {
  const worksOffline = useWorkbench((state) => state.worksOffline);
  const [over, setOver] = useState(false);
  return (
    <div className="start">
      <section className="stack">
        <h1>See where the joints of a panel show, from its photograph.</h1>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is one of several ways in */}
        <div
          className={`bring${over ? ' over' : ''}`}
          onDragEnter={() => setOver(true)}
          onDragLeave={() => setOver(false)}
          onDrop={() => setOver(false)}
        >
          <BringButtons />
          <p className="soft">
            Or drop one here, or paste it. The photo stays on this device: nothing is sent anywhere.
            {worksOffline && ' The page now works without a network too.'}
          </p>
        </div>
      </section>
      <section className="stack">
        <h2>Or look at one that is ready</h2>
        <SampleCards />
      </section>
      <KeptProjects />
    </div>
  );
}
