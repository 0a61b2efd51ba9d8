import { useState } from 'react';
import type { ForecastResult } from '../../core/results/forecastResult.js';
import type { RunningJob } from '../../job/webWorkerClient.js';
import { saveToDisk } from '../actions/saveToDisk.js';
import { forecastQuestion } from '../analysis/forecastQuestion.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { Photo, Project } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { jobs } from '../worker/jobs.js';

export interface ForecastButtonsProps {
  readonly project: Project;
  readonly photo: Photo;
  readonly panel: PanelOnShelf;
}

/** Saves the whole forecast, as the command line would print it; it takes some seconds. */
export function ForecastButtons({ project, photo, panel }: ForecastButtonsProps) {
  const [running, setRunning] = useState<RunningJob<ForecastResult> | null>(null);
  const save = async () => {
    const options = forecastQuestion(photo, project.settings);
    const job = jobs.start('forecast', { photo: panel.panel, options });
    setRunning(job);
    try {
      const text = `${JSON.stringify(await job.result, null, 2)}\n`;
      saveToDisk(new Blob([text], { type: 'application/json' }), `${project.name} forecast.json`);
    } catch (thrown) {
      tellProblem(thrown, 'The forecast');
    } finally {
      setRunning(null);
    }
  };
  return (
    <section className="row" aria-label="Forecast">
      {running ? (
        <>
          <span role="status">Forecasting…</span>
          <button type="button" onClick={running.cancel}>
            Stop
          </button>
        </>
      ) : (
        <button type="button" onClick={save}>
          Save the forecast
        </button>
      )}
    </section>
  );
}
