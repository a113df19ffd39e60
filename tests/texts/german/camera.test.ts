import { afterEach, expect, it } from 'vitest';
import { heldSentence } from '../../../src/camera/cameraHold';
import { camera as english } from '../../../src/texts/english/camera';
import { english as allEnglish } from '../../../src/texts/english/english';
import { camera } from '../../../src/texts/german/camera';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import { cameraSentence } from '../../../src/ui/camera/cameraSentence';

afterEach(() => speak({ language: 'en', texts: allEnglish }));

it('counts stones and photos of the burst', () => {
  expect([camera.stones(1), camera.stones(12)]).toEqual(['1 Stein', '12 Steine']);
  expect(camera.taking(2, 5)).toBe('Foto 2 von 5 …');
  expect(english.taking(2, 5)).toBe('Photo 2 of 5 …');
});

it('declines what a camera cannot lock', () => {
  speak({ language: 'de', texts: german });
  expect(heldSentence(['exposure', 'focus'], ['exposure', 'focus'])).toBe(
    'Festgehalten: Belichtung und Schärfe. Diese Kamera kann den Weißabgleich nicht festhalten.',
  );
  expect(heldSentence([], [])).toBe(
    'Diese Kamera kann die Belichtung, die Schärfe und den Weißabgleich nicht festhalten.',
  );
  expect(heldSentence([], ['exposure', 'focus', 'white balance'])).toBe('Noch nichts festgehalten.');
});

it('names the button that is there when the picture is too bright', () => {
  speak({ language: 'de', texts: german });
  const known = { status: { kind: 'live' }, advice: 'too-bright', number: 0, hasFailed: false } as Parameters<
    typeof cameraSentence
  >[0];
  expect(cameraSentence({ ...known, canDarken: true })).toContain(`„${camera.darker}“`);
  expect(cameraSentence({ ...known, canDarken: false })).toContain(camera.setDarker);
  expect(cameraSentence({ ...known, number: 1 })).toBe(camera.holdStill);
});

it('has buttons short enough for a phone', () => {
  const { lock, unlock, take, again, ownCamera } = camera;
  for (const word of [lock, unlock, take, again, ownCamera])
    expect(word.length, word).toBeLessThanOrEqual(24);
});
