using Companion.Engine;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Settings;
using Companion.Server.Shows;
using Companion.Server.Tests.Running;
using Companion.Session.Events;
using Companion.Session.Planning;
using Companion.Session.State;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Tests.Log;

public sealed partial class SalvageTests
{
    // SQLite's usual size.
    private const int Page = 4096;

    private static readonly DateTimeOffset Noon = new(2026, 1, 2, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void A_long_log_cut_anywhere_keeps_its_shows_that_were_before_the_cut()
    {
        using var made = new TemporaryFolder();
        var (bytes, events) = MadeIn(made, shows: 20, eventsEach: 60);
        var random = new Random(5);
        for (var cut = 0; cut < 25; cut++)
            Cut(bytes, events, random.Next(8192, bytes.Length));
    }

    [Fact]
    public void A_log_with_a_hole_keeps_what_is_before_it_and_whole_shows_behind_it()
    {
        using var made = new TemporaryFolder();
        var (bytes, events) = MadeIn(made, shows: 20, eventsEach: 60);
        using var folder = new TemporaryFolder();
        bytes.AsSpan(bytes.Length / 4096 / 2 * 4096, 4096).Fill(0xAA);
        File.WriteAllBytes(folder.In("events.db"), bytes);

        using var log = SqliteEventLog.OpenOrSalvage(DataFolder.Open(folder.Path));

        Assert.Contains("damaged", log.Warning, StringComparison.Ordinal);
        var kept = log.Replay().ToList();
        var before = kept.Zip(events).TakeWhile(pair => pair.First == pair.Second).Count();
        var behind = kept.AsEnumerable().Reverse().Zip(events.AsEnumerable().Reverse()).TakeWhile(pair => pair.First == pair.Second).Count();
        Assert.Equal(kept.Count, before + behind);
        Assert.InRange(before, 300, 800);
        Assert.InRange(behind, 300, 800);
        Assert.IsType<ShowBegun>(kept[before]);
        var shows = new ShowLibrary(DataFolder.Open(folder.Path)).List();
        Assert.Equal(shows.Length, kept.Count(happened => happened is ShowBegun) + 1);
        Assert.Equal(20, shows[^1].Id);
    }

    // Imported shows come first in order and stand on the file's last pages.
    [Fact]
    public void A_log_cut_in_an_imported_show_keeps_the_shows_that_were_played_here()
    {
        using var elsewhere = new TemporaryFolder();
        MadeIn(elsewhere, shows: 1, eventsEach: 200);
        using var made = new TemporaryFolder();
        var (own, events) = MadeIn(made, shows: 2, eventsEach: 60);
        var bytes = WithImport(made, elsewhere);
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.In("events.db"), bytes.AsSpan(0, own.Length + (bytes.Length - own.Length) * 3 / 4));

        using var log = SqliteEventLog.OpenOrSalvage(DataFolder.Open(folder.Path));

        Assert.Contains("damaged", log.Warning, StringComparison.Ordinal);
        Assert.Equal(events, log.Replay());
        Assert.Equal([1, 2], new ShowLibrary(DataFolder.Open(folder.Path)).List().Select(show => show.Id));
    }

    // Where an earlier version imported a show, what happened here had to make room for each of its events, so that the beginning of the
    // first show may stand behind the others.
    [Fact]
    public void Shows_between_two_that_are_damaged_are_kept()
    {
        using var made = new TemporaryFolder();
        var (own, events) = MadeIn(made, shows: 6, eventsEach: 60);
        var data = DataFolder.Open(made.Path);
        using (var file = EventDatabase.Open(data))
        {
            using var transaction = file.BeginTransaction();
            for (var sequence = -199; sequence <= 0; sequence++)
                file.Run("INSERT INTO event SELECT $1, at, kind, body FROM event WHERE sequence = $2", sequence, 1 + (sequence + 199) % 60);
            file.Run("INSERT INTO show (first, last) VALUES (-199, 0)");
            transaction.Commit();
        }

        using (var log = SqliteEventLog.Open(data))
            log.Append(events.Count, [.. Show(6, 60)]);
        events.AddRange(Show(6, 60));
        SqliteConnection.ClearAllPools();
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.In("events.db"), File.ReadAllBytes(data.Events).AsSpan(0, own.Length));

        using var salvaged = SqliteEventLog.OpenOrSalvage(DataFolder.Open(folder.Path));

        var kept = salvaged.Replay().ToList();
        Assert.InRange(kept.Count, 3 * 62, events.Count - 61);
        Assert.Equal(events.Skip(events.IndexOf(kept[0])).Take(kept.Count), kept);
        Assert.IsType<ShowBegun>(kept[0]);
        Assert.Equal(kept.Count(happened => happened is ShowBegun), new ShowLibrary(DataFolder.Open(folder.Path)).List().Length);
    }

    [Fact]
    public void A_log_with_a_hole_where_shows_were_played_here_keeps_an_imported_show()
    {
        using var made = new TemporaryFolder();
        var (own, _) = MadeIn(made, shows: 3, eventsEach: 200);
        var bytes = WithImport(made, made);
        using var folder = new TemporaryFolder();
        bytes.AsSpan(own.Length / 4096 / 2 * 4096, 4096).Fill(0xAA);
        File.WriteAllBytes(folder.In("events.db"), bytes);

        using var log = SqliteEventLog.OpenOrSalvage(DataFolder.Open(folder.Path));

        Assert.Contains("damaged", log.Warning, StringComparison.Ordinal);
        var shows = new ShowLibrary(DataFolder.Open(folder.Path));
        var (before, after) = (new ShowLibrary(DataFolder.Open(made.Path)).Open("4"), shows.Open("4"));
        Assert.True(Assert.Single(shows.List(), show => show.Id == 4).IsImported);
        Assert.Equal(before.Show.Events, after.Show.Events);
    }

    [Fact]
    public void The_damaged_file_is_kept_closed_to_others_and_the_session_goes_on_in_the_new_one()
    {
        using var made = new TemporaryFolder();
        var (bytes, _) = MadeIn(made, shows: 3, eventsEach: 60);
        using var folder = new TemporaryFolder();
        var data = DataFolder.Open(folder.Path);
        var cut = bytes.AsSpan(0, bytes.Length - 5000).ToArray();
        File.WriteAllBytes(data.Events, cut);

        using (var log = SqliteEventLog.OpenOrSalvage(data))
        {
            Assert.Equal(cut, File.ReadAllBytes(data.Events + ".damaged"));
            Assert.Contains(data.Events + ".damaged", log.Warning, StringComparison.Ordinal);
            log.Append(log.Restore().Sequence, [new MarksSettled(Noon)]);
        }

        using var again = SqliteEventLog.OpenOrSalvage(data);
        Assert.Null(again.Warning);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(data.Events + ".damaged"));
    }

    [Fact]
    public void Notes_kept_with_puzzles_are_saved()
    {
        using var made = new TemporaryFolder();
        MadeIn(made, shows: 20, eventsEach: 60);
        var data = DataFolder.Open(made.Path);
        using (var log = SqliteEventLog.Open(data))
            log.Append(log.Restore().Sequence, [new MarksSettled(Noon)], new(Grids.EssayOne, Notes("r1c1=1", "Only kept")));
        var bytes = File.ReadAllBytes(data.Events);
        using var folder = new TemporaryFolder();
        bytes.AsSpan(bytes.Length / 4096 / 2 * 4096, 4096).Fill(0xAA);
        File.WriteAllBytes(folder.In("events.db"), bytes);

        using var salvaged = SqliteEventLog.OpenOrSalvage(DataFolder.Open(folder.Path));

        Assert.NotNull(salvaged.Warning);
        Assert.Equal(Notes("r1c1=1", "Only kept"), salvaged.NotesOf(Grids.EssayOne));
    }

    [Fact]
    public void A_cut_write_ahead_log_loses_the_decisions_behind_the_cut_and_nothing_else()
    {
        using var made = new TemporaryFolder();
        var data = DataFolder.Open(made.Path);
        using var log = SqliteEventLog.Open(data);
        List<Event> events = [.. Enumerable.Range(0, 30).Select(number => new MarksSettled(Noon.AddSeconds(number)))];
        for (var index = 0; index < events.Count; index++)
            log.Append(index, [events[index]]);
        var (main, wal) = (Shared(data.Events), Shared(data.Events + "-wal"));
        var random = new Random(3);
        for (var cut = 0; cut < 20; cut++)
        {
            using var folder = new TemporaryFolder();
            File.WriteAllBytes(folder.In("events.db"), main);
            File.WriteAllBytes(folder.In("events.db-wal"), wal[..random.Next(wal.Length)]);
            using var read = SqliteEventLog.OpenOrSalvage(DataFolder.Open(folder.Path));

            var kept = read.Replay().ToList();
            Assert.Equal(events.Take(kept.Count), kept);
            Assert.Null(read.Warning);
        }
    }

    private static ValueArray<StepNote> Notes(string places, string text) =>
        new([new(CandidateSet.Parse(places), CandidateSet.Empty, text)]);

    private static int Cut(byte[] bytes, List<Event> events, int length)
    {
        using var folder = new TemporaryFolder();
        var data = DataFolder.Open(folder.Path);
        File.WriteAllBytes(data.Events, bytes.AsSpan(0, length));

        using var log = SqliteEventLog.OpenOrSalvage(data);

        var kept = log.Replay().ToList();
        Assert.Equal(events.Take(kept.Count), kept);
        Assert.NotNull(log.Warning);
        Assert.Equal(kept.Count, log.Restore().Sequence);
        if (kept.Count > 0)
            Assert.Equal(kept.Count(happened => happened is ShowBegun) + 1, new ShowLibrary(data).List().Length);

        // What is wholly within the file is read: a page holds some 25 events.
        Assert.InRange(kept.Count, Math.Max(0, (length - 6 * 4096) / 4096 * 15), events.Count);
        return kept.Count;
    }

    private static (byte[] Bytes, List<Event> Events) MadeIn(TemporaryFolder folder, int shows, int eventsEach)
    {
        var data = DataFolder.Open(folder.Path);
        var events = new List<Event>();
        using (var log = SqliteEventLog.Open(data))
        {
            for (var show = 0; show < shows; show++)
            {
                List<Event> made = [.. Show(show, eventsEach)];
                log.Append(events.Count, made);
                events.AddRange(made);
            }
        }

        SqliteConnection.ClearAllPools();
        return (File.ReadAllBytes(data.Events), events);
    }

    // The log with the first show of a folder, out of a file.
    private static byte[] WithImport(TemporaryFolder folder, TemporaryFolder of)
    {
        using (var file = File.Create(folder.In("first.json")))
            new ShowLibrary(DataFolder.Open(of.Path)).Export("1", file);
        new ShowLibrary(DataFolder.Open(folder.Path)).Import(folder.In("first.json"), new(ShippedFiles.Wording(LadderFile.Read(null))));
        SqliteConnection.ClearAllPools();
        return File.ReadAllBytes(folder.In("events.db"));
    }

    private static IEnumerable<Event> Show(int show, int events)
    {
        if (show > 0)
            yield return new ShowBegun(Noon.AddDays(show), $"Evening {show}", show * events, show);
        yield return new PuzzleLoaded(Noon.AddDays(show), Grids.EssayOne, "Lanterns", "", "");
        for (var entry = 0; entry < events; entry++)
            yield return new StrikeChanged(Noon.AddDays(show).AddSeconds(entry), CellSet.Of(Cell.At(entry % 81)), Digit.Of(entry % 9 + 1), entry % 2 == 0);
    }

    private static byte[] Shared(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }
}
