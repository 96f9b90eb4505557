import { describe, expect, test } from 'vitest';
import { replayKey } from '../../src/replay/keys.ts';
import { fastest, Playback, slowest } from '../../src/replay/playback.ts';

const moments = [0, 1, 3, 60, 61].map((at, index) => ({ number: index * 2 + 1, at, recorded: null }));

describe('a replay', () => {
  test('goes on with the time, at its speed, and stops at its end', () => {
    const playback = new Playback(moments);
    playback.tick(100);
    expect(playback.index).toBe(0);

    playback.toggle();
    playback.tick(1);
    expect(playback.moment?.number).toBe(3);
    playback.setSpeed(10);
    playback.tick(0.5);
    expect(playback.index).toBe(2);
    playback.tick(100);

    expect([playback.index, playback.isPlaying]).toEqual([4, false]);
  });

  test('leaves no moment out that its time has passed, and shows none before it', () => {
    // Powers of two add up exactly.
    for (const speed of [0.25, 1, 8, 512]) {
      const playback = new Playback(moments);
      playback.toggle();
      playback.setSpeed(speed);
      let time = 0;
      while (playback.isPlaying) {
        playback.tick(1 / 16);
        time += speed / 16;
        const passed = moments.filter(({ at }) => at <= time).length - 1;
        if (playback.index !== passed)
          throw new Error(`At ${time} it shows ${playback.index}, not ${passed}.`);
      }
      expect(playback.isAtEnd).toBe(true);
    }
  });

  test('plays from the beginning once it is at its end', () => {
    const playback = new Playback(moments);
    playback.step(99);
    expect(playback.isAtEnd).toBe(true);

    playback.toggle();

    expect([playback.index, playback.isPlaying]).toEqual([0, true]);
  });

  test('steps both ways, and pauses for it', () => {
    const playback = new Playback(moments);
    playback.toggle();
    playback.step(2);
    expect([playback.index, playback.isPlaying]).toEqual([2, false]);
    playback.step(-5);
    expect(playback.index).toBe(0);
  });

  test('waits no longer than five seconds where waits are cut short', () => {
    const playback = new Playback(moments);
    playback.cutWaits(true);
    playback.toggle();
    playback.tick(3);
    expect(playback.index).toBe(2);
    playback.tick(4.9);
    expect(playback.index).toBe(2);
    playback.tick(0.2);
    expect(playback.index).toBe(3);
  });

  test('has a speed within bounds, whatever is asked for', () => {
    const playback = new Playback(moments);
    for (let times = 0; times < 40; times++) playback.faster(1);
    expect(playback.speed).toBe(fastest);
    for (let times = 0; times < 80; times++) playback.faster(-1);
    expect(playback.speed).toBe(slowest);
    playback.setSpeed(Number.NaN);
    expect(playback.speed).toBe(slowest);
  });

  test('of nothing stands still', () => {
    const playback = new Playback([]);
    playback.toggle();
    playback.tick(5);
    expect([playback.moment, playback.isPlaying]).toEqual([null, false]);
  });

  test('is worked by keys', () => {
    const playback = new Playback(moments);
    for (const key of ['ArrowRight', 'PageDown', 'Home', '+', 'w']) replayKey(key)?.(playback);
    expect([playback.index, playback.speed, playback.cutsWaits]).toEqual([0, 2, true]);
    for (const key of ['End', 'ArrowLeft', '1']) replayKey(key)?.(playback);
    expect([playback.index, playback.speed]).toEqual([3, 1]);
    expect(replayKey('x')).toBeNull();
  });
});
