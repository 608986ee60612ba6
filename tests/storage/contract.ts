import { describe, expect, it } from 'vitest';
import { addSignOff } from '../../src/layout/edit/signOffs.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { NOTHING_STORED, type StorageChange, type StoragePort } from '../../src/storage/port.ts';
import { sample } from './sample.ts';

/** Opens ports on the same data, as tabs do, with a clock that moves on 1 ms each time it is read. */
export interface Fixture {
  open(): StoragePort;
  /** Puts a text where the document of a layout is stored, past every check. */
  damage(id: string, text: string): Promise<void>;
  /** Makes the next write fail for want of room. */
  fillUp(): void;
  /** Documents that are stored, of whatever layout. */
  documents(): Promise<readonly { readonly id: string; readonly revision: number }[]>;
}

/** What every storage must do. `set` gives an empty one to each test. */
export function storageContract(name: string, set: () => Fixture): void {
  describe(`${name}: the storage contract`, () => {
    keepsAndLists(set);
    keepsHistory(set);
    tellsSignOffs(set);
    losesNoEdit(set);
    guardsWhatIsStored(set);
    marksWhatIsRemoved(set);
    tellsTheOthers(set);
  });
}

function keepsAndLists(set: () => Fixture): void {
  it('S2 gives back what was saved, from another port as well', async () => {
    const { open } = set();
    const saved = await open().save(sample('one'), NOTHING_STORED);
    expect(saved).toMatchObject({ ok: true, revision: 1 });
    expect(await open().load('one')).toEqual({
      ok: true,
      layout: sample('one'),
      revision: 1,
      at: saved.ok && saved.at,
    });
  });

  it('lists what a list shows, the last changed first', async () => {
    const storage = set().open();
    await storage.save(sample('one', 'First'), NOTHING_STORED);
    await storage.save(sample('two', 'Second'), NOTHING_STORED);
    await storage.save({ ...sample('one', 'First'), margin: 60 }, 1);
    const { rows, refusal } = await storage.list();
    expect(refusal).toBeNull();
    expect(rows.map(({ id, revision }) => [id, revision])).toEqual([
      ['one', 2],
      ['two', 1],
    ]);
    expect(rows[0]).toMatchObject({ name: 'First', venue: 'Cellar', pieces: 1, mics: 0 });
  });

  it('says what is missing', async () => {
    const storage = set().open();
    expect(await storage.load('none')).toEqual({ ok: false, kind: 'missing' });
    expect(await storage.remove('none')).toEqual({ ok: false, kind: 'missing' });
    expect(await storage.restore('none')).toEqual({ ok: false, kind: 'missing' });
  });

  it('lists what a layout is found by: player, venue, date, and a small plan', async () => {
    const storage = set().open();
    const layout = sample('one');
    const venue = { ...layout.venue, date: '2026-07-11' };
    await storage.save({ ...layout, venue }, NOTHING_STORED);
    expect((await storage.list()).rows[0]).toMatchObject({
      player: 'Drummer',
      venue: 'Cellar',
      date: '2026-07-11',
      picture: '0 0 0 330 330 0',
      favourite: false,
      archived: false,
      tags: [],
      signOff: 'none',
      otherLines: 0,
    });
  });

  it('marks are kept beside a layout, and make no revision', async () => {
    const storage = set().open();
    await storage.save(sample('one'), NOTHING_STORED);
    expect(await storage.mark('one', { favourite: true, tags: ['tour', 'tour'] })).toEqual({
      ok: true,
    });
    await storage.save(sample('one', 'Renamed'), 1);
    expect(await storage.mark('one', { archived: true })).toEqual({ ok: true });
    expect((await storage.list()).rows).toMatchObject([
      { name: 'Renamed', favourite: true, archived: true, tags: ['tour'], revision: 2 },
    ]);
    expect(await storage.mark('none', { favourite: true })).toMatchObject({ kind: 'missing' });
  });

  it('text is text: names with markup come back to the letter', async () => {
    const storage = set().open();
    const name = '<img src=x onerror=alert(1)> 𝄞 "‮';
    await storage.save(sample('one', name), NOTHING_STORED);
    expect((await storage.list()).rows[0]?.name).toBe(name);
    expect(await storage.load('one')).toMatchObject({ layout: { name } });
  });
}

function keepsHistory(set: () => Fixture): void {
  it('S7 overwrites nothing: every revision stays, with the one it came from', async () => {
    const fixture = set();
    const storage = fixture.open();
    await storage.save(sample('one'), NOTHING_STORED);
    await storage.save(sample('one', 'Again'), 1);
    await storage.save(sample('one', 'And again'), 2);
    await storage.save(sample('two'), NOTHING_STORED);
    expect(
      (await fixture.documents()).map(({ id, revision }) => `${id} ${revision}`).sort(),
    ).toEqual(['one 1', 'one 2', 'one 3', 'two 1']);
    expect(await storage.revisions('one')).toMatchObject([
      { revision: 1, parent: 0, name: '', signed: null, tip: null },
      { revision: 2, parent: 1, name: '', signed: null, tip: null },
      { revision: 3, parent: 2, name: '', signed: null, tip: 'holds' },
    ]);
    expect(await storage.loadRevision('one', 2)).toMatchObject({ layout: { name: 'Again' } });
    expect(await storage.loadRevision('one', 4)).toEqual({ ok: false, kind: 'missing' });
    expect(await storage.loadRevision('three', 1)).toEqual({ ok: false, kind: 'missing' });
    expect(await storage.revisions('three')).toEqual([]);
  });

  it('S8 a new sign-off makes a signed point, a name a named one', async () => {
    const storage = set().open();
    const sign = (layout: Layout, consent: boolean): Layout =>
      addSignOff(layout, {
        ...{ name: 'Drummer', at: '2026-07-11T18:00:00Z', consent, answers: [], notes: '' },
      });
    const signed = sign(sample('one'), true);
    await storage.save(sample('one'), NOTHING_STORED);
    await storage.save(signed, 1);
    await storage.save({ ...signed, name: 'Later' }, 2);
    await storage.save({ ...sign(signed, false), name: 'Asked again' }, 3);
    expect(await storage.nameRevision('one', 1, 'Before the show')).toEqual({ ok: true });
    expect(await storage.nameRevision('one', 9, 'x')).toEqual({ ok: false, kind: 'missing' });
    expect(await storage.revisions('one')).toMatchObject([
      { name: 'Before the show', signed: null },
      { name: '', signed: 'Drummer', withheld: null },
      { name: '', signed: null, withheld: null },
      { name: '', signed: null, withheld: 'Drummer' },
    ]);
  });
}

function tellsSignOffs(set: () => Fixture): void {
  it('lists how the sign-off stands to the layout as it was saved last, not that there was one', async () => {
    const storage = set().open();
    let revision = NOTHING_STORED;
    const listedAs = async (layout: Layout) => {
      const saved = await storage.save(layout, revision);
      if (saved.ok) revision = saved.revision;
      return (await storage.list()).rows[0]?.signOff;
    };
    const plain = sample('one');
    const signed = addSignOff(plain, {
      ...{ name: 'Drummer', at: '2026-07-11T18:00:00Z', consent: true, answers: [], notes: '' },
    });
    expect(await listedAs(plain)).toBe('none');
    expect(await listedAs(signed)).toBe('holds');
    expect(await listedAs({ ...signed, name: 'Renamed' })).toBe('holds');
    const player = { ...signed.player, seatHeight: 520 };
    expect(await listedAs({ ...signed, player })).toBe('stale');
    expect(await listedAs(signed)).toBe('holds');
  });
}

function losesNoEdit(set: () => Fixture): void {
  it('S1 a save over another revision is a conflict and changes nothing', async () => {
    const storage = set().open();
    await storage.save(sample('one', 'Mine'), NOTHING_STORED);
    await storage.save(sample('one', 'Theirs'), 1);
    for (const stale of [NOTHING_STORED, 1, 3]) {
      expect(await storage.save(sample('one', 'Late'), stale)).toEqual({
        ok: false,
        kind: 'conflict',
      });
    }
    expect(await storage.load('one')).toMatchObject({ revision: 2, layout: { name: 'Theirs' } });
    expect(await storage.save(sample('two'), 1)).toEqual({ ok: false, kind: 'conflict' });
  });

  it('S1 of saves at once over the same revision exactly one is taken', async () => {
    const { open } = set();
    const tabs = [open(), open(), open()];
    await tabs[0]?.save(sample('one'), NOTHING_STORED);
    const outcomes = await Promise.all(
      tabs.map((tab, index) => tab.save(sample('one', `Tab ${index}`), 1)),
    );
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('S1 what is there already, to the letter, is saved', async () => {
    const storage = set().open();
    const first = await storage.save(sample('one'), NOTHING_STORED);
    expect(await storage.save(sample('one'), NOTHING_STORED)).toEqual(first);
  });

  it('S1 two tabs with 200 alternating edits lose none', async () => {
    const { open } = set();
    const tabs = [open(), open()];
    await tabs[0]?.save(sample('one'), NOTHING_STORED);
    let conflicts = 0;
    /** One tab adds an edit as a user would: on what it has, again after a conflict on what is there. */
    const add = async (tab: StoragePort, edit: number): Promise<void> => {
      const there = await tab.load('one');
      if (!there.ok) throw new Error('expected the layout');
      const { venue } = there.layout;
      const notes = `${venue.notes}${edit} `;
      const edited = { ...there.layout, venue: { ...venue, notes } };
      const outcome = await tab.save(edited, there.revision);
      if (outcome.ok) return;
      conflicts++;
      await add(tab, edit);
    };
    const run = async (tab: StoragePort | undefined, from: number) => {
      for (let edit = from; edit < 200; edit += 2) if (tab) await add(tab, edit);
    };
    await Promise.all([run(tabs[0], 0), run(tabs[1], 1)]);
    const end = await open().load('one');
    const edits = end.ok ? end.layout.venue.notes.trim().split(' ').map(Number) : [];
    expect(edits.sort((a, b) => a - b)).toEqual(Array.from({ length: 200 }, (_, edit) => edit));
    expect(conflicts).toBeGreaterThan(0);
  });
}

function guardsWhatIsStored(set: () => Fixture): void {
  it.each([
    ['text that is not JSON', '{"schema":1,'],
    ['a field of the wrong type', JSON.stringify({ ...sample('one'), margin: 'wide' })],
    ['a newer version', JSON.stringify({ ...sample('one'), schema: 99 })],
    ['another layout', JSON.stringify(sample('two'))],
  ])('S3 names and keeps a stored document with %s', async (_, text) => {
    const fixture = set();
    const storage = fixture.open();
    await storage.save(sample('one', 'Festival'), NOTHING_STORED);
    await fixture.damage('one', text);
    const loaded = await fixture.open().load('one');
    expect(loaded).toMatchObject({ ok: false, kind: 'unreadable', name: 'Festival', text });
    expect(!loaded.ok && loaded.kind === 'unreadable' && loaded.problems.length).toBeTruthy();
    expect((await storage.list()).rows.map(({ name }) => name)).toEqual(['Festival']);
    expect(await storage.save(sample('one'), NOTHING_STORED)).toMatchObject({ kind: 'conflict' });
    expect(await fixture.open().load('one')).toMatchObject({ kind: 'unreadable', text });
  });

  it('S3 does not store a layout that its own check refuses', async () => {
    const storage = set().open();
    await storage.save(sample('one'), NOTHING_STORED);
    for (const margin of [Number.POSITIVE_INFINITY, Number.NaN, 5000]) {
      const outcome = await storage.save({ ...sample('one'), margin }, 1);
      expect(outcome).toMatchObject({ ok: false, kind: 'refused', reason: 'other' });
    }
    expect(await storage.load('one')).toMatchObject({ ok: true, revision: 1 });
  });

  it('S6 says when there is no room, and keeps what was there', async () => {
    const fixture = set();
    const storage = fixture.open();
    await storage.save(sample('one'), NOTHING_STORED);
    fixture.fillUp();
    expect(await storage.save(sample('one', 'Larger'), 1)).toMatchObject({
      ok: false,
      kind: 'refused',
      reason: 'quota',
    });
    expect(await storage.load('one')).toMatchObject({ revision: 1, layout: sample('one') });
    expect(await storage.save(sample('one', 'Larger'), 1)).toMatchObject({ ok: true });
  });
}

function marksWhatIsRemoved(set: () => Fixture): void {
  it('S4 a removed layout is out of sight, and comes back as it was', async () => {
    const storage = set().open();
    await storage.save(sample('one'), NOTHING_STORED);
    expect(await storage.remove('one')).toEqual({ ok: true });
    expect((await storage.list()).rows).toEqual([]);
    expect(await storage.load('one')).toEqual({ ok: false, kind: 'missing' });
    expect(await storage.save(sample('one', 'Late'), 1)).toEqual({ ok: false, kind: 'conflict' });
    expect(await storage.removed()).toMatchObject([
      { id: 'one', name: 'Small club', removedAt: expect.any(Number) },
    ]);
    expect(await storage.restore('one')).toEqual({ ok: true });
    expect(await storage.removed()).toEqual([]);
    expect(await storage.load('one')).toMatchObject({ ok: true, layout: sample('one') });
    expect(await storage.save(sample('one', 'Later'), 1)).toMatchObject({
      ok: true,
      revision: 2,
    });
  });

  it('S4 forgets only what was removed before', async () => {
    const fixture = set();
    const storage = fixture.open();
    for (const id of ['one', 'two', 'three']) await storage.save(sample(id), NOTHING_STORED);
    await storage.remove('one');
    const between = await storage.save(sample('four'), NOTHING_STORED);
    await storage.remove('two');
    expect(await storage.forget(between.ok ? between.at : 0)).toBeNull();
    expect(await storage.restore('one')).toEqual({ ok: false, kind: 'missing' });
    expect(await storage.restore('two')).toEqual({ ok: true });
    const ids = (await storage.list()).rows.map(({ id }) => id).sort();
    expect(ids).toEqual(['four', 'three', 'two']);
    expect((await fixture.documents()).map(({ id }) => id).sort()).toEqual(ids);
  });
}

function tellsTheOthers(set: () => Fixture): void {
  it('S5 tells the other ports, and not itself', async () => {
    const { open } = set();
    const [mine, other] = [open(), open()];
    const heard: StorageChange[] = [];
    const echoes: StorageChange[] = [];
    mine.watch((change) => echoes.push(change));
    const stop = other.watch((change) => heard.push(change));
    await mine.save(sample('one'), NOTHING_STORED);
    await mine.save(sample('one', 'Stale'), 7);
    await mine.remove('one');
    await mine.restore('one');
    await expect.poll(() => heard).toHaveLength(3);
    expect(heard).toEqual([
      { kind: 'written', id: 'one' },
      { kind: 'removed', id: 'one' },
      { kind: 'restored', id: 'one' },
    ]);
    expect(echoes).toEqual([]);
    stop();
    const third = open();
    const last: StorageChange[] = [];
    third.watch((change) => last.push(change));
    await mine.remove('one');
    await expect.poll(() => last).toHaveLength(1);
    expect(heard).toHaveLength(3);
  });
}
