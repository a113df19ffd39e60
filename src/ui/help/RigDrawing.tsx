import { useSpeech } from '../useSpeech';

/** Camera, lamp, ball and stones from the side. */
export function RigDrawing() {
  const { rigDrawing: words } = useSpeech().texts.camera;
  return (
    <svg className="help-rig" viewBox="0 0 360 250" role="img" aria-label={words.alt}>
      <path className="rig-axis" d="M150 62V205" />
      <path className="rig-ray" d="M262 72L156 202" />
      <path className="rig-turn" d="M150 120A86 86 0 0 1 205 139" />
      <path className="rig-thing" d="M122 26h56v24h-56zM138 50h24v10h-24z" />
      <path className="rig-thing" d="M244 48l42 30-14 16-42-30z" />
      <path className="rig-bright" d="M231 65l42 29" />
      <path className="rig-line" d="M34 222H300M34 222v-10M300 222v-10" />
      <path className="rig-stone" d="M60 222c-4-16 6-28 24-28s26 10 25 28z" />
      <path className="rig-stone" d="M190 222c-3-13 8-23 27-22s27 9 26 22z" />
      <circle className="rig-ball" cx="150" cy="208" r="14" />
      <circle className="rig-glint" cx="155" cy="201" r="3" />
      <text x="116" y="42" textAnchor="end">
        {words.camera}
      </text>
      <text x="296" y="62">
        {words.lamp}
      </text>
      <text x="164" y="112">
        25–45°
      </text>
      <text x="150" y="243" textAnchor="middle">
        {words.stones}
      </text>
    </svg>
  );
}
