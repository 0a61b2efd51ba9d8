import { type Layers, useWorkbench } from '../state/workbench.js';

const names: Readonly<Record<keyof Layers, string>> = {
  grain: 'grain strokes',
  seams: 'joints',
  worst: 'worst places',
};

/** What is drawn over the panel. */
export function LayerTicks() {
  const layers = useWorkbench((state) => state.layers);
  return (
    <fieldset className="row">
      <legend className="heard-only">Draw over the panel</legend>
      {(Object.keys(names) as (keyof Layers)[]).map((layer) => (
        <label className="tick" key={layer}>
          <input
            type="checkbox"
            checked={layers[layer]}
            onChange={({ target }) =>
              useWorkbench.setState({ layers: { ...layers, [layer]: target.checked } })
            }
          />
          {names[layer]}
        </label>
      ))}
    </fieldset>
  );
}
