import { hostJobs, type WorkerScope } from '../../job/webWorkerHost.js';
import { loadOpenCv } from '../../vision/web/loadOpenCv.js';

hostJobs(self as unknown as WorkerScope, loadOpenCv);
