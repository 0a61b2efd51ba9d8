import { useState } from 'react';
import type { ForecastResult } from '../../core/results/forecastResult.js';
import type { RunningJob } from '../../job/webWorkerClient.js';
import { printPage } from '../actions/printPage.js';
import { saveToDisk } from '../actions/saveToDisk.js';
import { forecastQuestion } from '../analysis/forecastQuestion.js';
import { forecastReport } from '../analysis/forecastReport.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Photo, Project } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { jobs } from '../worker/jobs.js';

export interface ForecastButtonsProps {
  readonly project: Project;
  readonly photo: Photo;
  readonly panel: PanelOnShelf;
}

/** Prints or saves the whole forecast, as the command line would make it; it takes some seconds. */
export function ForecastButtons({ project, photo, panel }: ForecastButtonsProps) {
  const [running, setRunning] = useState<RunningJob<ForecastResult> | null>(null);
  const { name, settings } = project;
  const withForecast = (use: (result: ForecastResult) => unknown) => async () => {
    const options = forecastQuestion(photo, settings);
    const job = jobs.start('forecast', { photo: panel.panel, options });
    setRunning(job);
    try {
      await use(await job.result);
    } catch (thrown) {
      tellProblem(thrown, 'The forecast');
    } finally {
      setRunning(null);
    }
  };
  const report = (result: ForecastResult) =>
    forecastReport(result, panel, name, lengthUnitsOf(settings.unit));
  const save = (text: string, type: string, ending: string) =>
    saveToDisk(new Blob([text], { type }), `${name} forecast.${ending}`);
  if (running) {
    return (
      <section className="row" aria-label="Forecast">
        <span role="status">Forecasting…</span>
        <button type="button" onClick={running.cancel}>
          Stop
        </button>
      </section>
    );
  }
  return (
    <section className="row" aria-label="Forecast">
      <button
        type="button"
        onClick={withForecast(async (result) => printPage(await report(result)))}
      >
        Print
      </button>
      <button
        type="button"
        onClick={withForecast(async (result) => save(await report(result), 'text/html', 'html'))}
      >
        Save the report
      </button>
      <button
        type="button"
        onClick={withForecast((result) =>
          save(`${JSON.stringify(result, null, 2)}\n`, 'application/json', 'json'),
        )}
      >
        Save the numbers
      </button>
    </section>
  );
}
