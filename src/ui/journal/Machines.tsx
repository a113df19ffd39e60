import { useState } from 'react';
import { weightWords } from '../../recipes/units';
import { texts } from '../../texts/speech';
import { useJournal, useSettings } from '../stores';
import { MachineForm } from './MachineForm';

/** The owner's machines, and room for one more. */
export function Machines() {
  const { machines, say } = useJournal((state) => state);
  const units = useSettings((state) => state.units);
  const { machines: words, machineKindsShort } = texts().journal;
  const [isAdding, setAdding] = useState(false);
  return (
    <section className="machines" aria-labelledby="machines-title">
      <h3 id="machines-title">{words.title}</h3>
      <ul>
        {machines.map(({ id, name, type, capacityKg }) => (
          <li key={id}>
            <strong>{name}</strong>, {machineKindsShort[type]}
            {capacityKg !== null && `, ${weightWords(capacityKg, units)}`}
          </li>
        ))}
      </ul>
      {isAdding ? (
        <MachineForm
          onAdd={async (machine) => {
            if (await say([machine])) setAdding(false);
          }}
        />
      ) : (
        <button type="button" className="button" onClick={() => setAdding(true)}>
          {words.add}
        </button>
      )}
    </section>
  );
}
