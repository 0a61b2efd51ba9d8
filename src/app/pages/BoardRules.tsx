import { changeSettings } from '../actions/changeSettings.js';
import { Choice } from '../parts/Choice.js';
import type { Settings } from '../state/project.js';

/** What holds for all the boards when the best order is looked for. */
export function BoardRules({ settings }: { readonly settings: Settings }) {
  return (
    <section className="stack" aria-label="All the boards">
      <h2>All the boards</h2>
      <Choice
        label="Heart sides"
        value={settings.heartSides}
        options={[
          ['free', 'as they come'],
          ['up', 'all up'],
          ['alternating', 'up and down by turns'],
        ]}
        onChange={(heartSides) => changeSettings('Change the rule for heart sides', { heartSides })}
      />
      <Choice
        label="They plane"
        value={settings.planeOneWay ? 'oneWay' : 'free'}
        options={[
          ['free', 'as they come; say what will tear'],
          ['oneWay', 'all the same way'],
        ]}
        onChange={(way) =>
          changeSettings('Change the rule for planing', { planeOneWay: way === 'oneWay' })
        }
      />
      <Choice
        label="Boards that were one face lie"
        value={settings.layBoards}
        options={[
          ['asGrown', 'as they grew'],
          ['leastSeen', 'where their joints show least'],
        ]}
        onChange={(layBoards) => changeSettings('Change how boards are laid', { layBoards })}
      />
    </section>
  );
}
