using System.Text;
using Companion.Engine;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Settings;
using Companion.Server.Shows;
using Companion.Server.Tests.Running;
using Companion.Session;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Shows.Files;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Tests.Shows;

public sealed class ShowLibraryTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 1, 2, 12, 0, 0, TimeSpan.Zero);

    private static readonly Voice Voice = new(ShippedFiles.Wording(LadderFile.Read(null)));

    private readonly TemporaryFolder _temporary = new();

    private DataFolder Folder => DataFolder.Open(_temporary.Path);

    private ShowLibrary Library => new(Folder);

    [Fact]
    public void Every_show_is_listed_with_what_was_in_it()
    {
        var live = Play(3);

        var shows = Library.List();

        Assert.Equal([1, 2, 3], shows.Select(show => show.Id));
        Assert.Equal(["Lanterns 0", "Evening 1", "Evening 2"], shows.Select(show => show.Title));
        Assert.Equal(["Lanterns 1"], shows[1].Puzzles);
        Assert.Equal((Noon.AddDays(1), 10.0, 4, 2), (shows[1].Began, shows[1].Seconds, shows[1].Events, shows[1].Entries));
        Assert.Equal([false, false, true], shows.Select(show => show.IsLive));
        Assert.Equal(shows[2].Hash, ShowHash.Of(Library.Open("3").File.Events));
        Assert.Equal(live, Library.Open("latest").Show.Last);
    }

    [Fact]
    public void Every_show_opens_by_its_number_with_the_states_that_it_had_live()
    {
        Play(3);
        using var log = SqliteEventLog.Open(Folder);
        var states = new List<SessionState> { SessionState.Initial };
        foreach (var happened in log.Replay())
            states.Add(Evolver.Evolve(states[^1], happened));

        var opened = Enumerable.Range(1, 3).SelectMany(id => Library.Open($"{id}").Show.Moments).Select(moment => moment.State);

        Assert.Equal(states.Skip(1), opened);
        Assert.Equal(states[^1], log.Restore());
    }

    [Fact]
    public void A_show_that_is_over_is_read_once()
    {
        Play(2);
        var before = Library.List();
        Run("UPDATE event SET body = 'unreadable' WHERE sequence = 1");

        Assert.Equal(before[0].ToString(), Library.List()[0].ToString());
        Assert.Contains("start the version that wrote it", Assert.Throws<PlainException>(() => Library.Open("1")).Message, StringComparison.Ordinal);
        Assert.Equal(4, Library.Open("2").Show.Moments.Length);
    }

    [Fact]
    public void A_log_of_the_first_layout_is_one_show()
    {
        Run("CREATE TABLE event (sequence INTEGER PRIMARY KEY, at INTEGER NOT NULL, kind TEXT NOT NULL, body TEXT NOT NULL); PRAGMA user_version=1");
        var stored = EventText.Write(new PuzzleLoaded(Noon, Grids.EssayOne, "Lanterns", "", ""));
        Run($"INSERT INTO event VALUES (1, {Noon.UtcTicks}, '{stored.Kind}', '{stored.Body}')");

        Assert.Equal((1, "Lanterns", true), Library.List() is [var show] ? (show.Id, show.Title, show.IsLive) : default);
        using var log = SqliteEventLog.OpenOrSalvage(Folder);
        Assert.Equal(1, log.Restore().Sequence);
    }

    [Fact]
    public void A_log_of_the_second_layout_gives_its_puzzles_the_notes_that_were_written_last()
    {
        using (var log = SqliteEventLog.Open(Folder))
        {
            log.Append(0, [Loaded(Grids.EssayOne), Noted("First")]);
            log.Append(2, [new ShowBegun(Noon, "", 0, 1), Loaded(Grids.Textbook), Noted("Of the other"), Loaded(Grids.EssayOne), Noted("Last")]);
            log.Append(7, [new ShowBegun(Noon, "", 0, 3), Loaded(Grids.Textbook)]);
        }

        Run("DROP TABLE note; PRAGMA user_version=2");

        using var read = SqliteEventLog.Open(Folder);
        Assert.Equal(
            ["Last", "Of the other"],
            new[] { Grids.EssayOne, Grids.Textbook }.Select(grid => Assert.Single(read.NotesOf(Puzzle.Parse(grid).Board.ToString())!.Value).Text));
        Assert.Null(read.NotesOf(Puzzle.Parse(Grids.EssayTwo).Board.ToString()));

        static Event Loaded(string grid) => new PuzzleLoaded(Noon, grid, "", "", "");
        static Event Noted(string text) => new StepNoted(Noon, CandidateSet.Parse("r1c1=1"), CandidateSet.Empty, text);
    }

    [Fact]
    public void An_exported_show_is_imported_elsewhere_with_the_same_hash_and_states()
    {
        Play(3);
        Library.SetOffset(2, 12.5);
        Library.SetChapters(2, [new(TimeSpan.FromSeconds(1), "Lanterns are lit")]);
        var exported = Exported("2");
        using var other = new TemporaryFolder();
        var library = new ShowLibrary(DataFolder.Open(other.Path));

        var id = library.Import(exported, Voice);
        Assert.Equal((1, 2), (id, library.Import(exported, Voice)));

        var (here, there) = (Library.Open("2"), library.Open("1"));
        Assert.Equal(here.Show.Last with { Sequence = 4, Show = 1 }, there.Show.Last);
        Assert.Equal((12.5, "Lanterns are lit"), (there.Show.Offset.TotalSeconds, there.File.Chapters!.Value[0].Title));
        var line = library.List()[1];
        Assert.Equal((Library.List()[1].Hash, false, true), (line.Hash, line.IsLive, line.IsImported));
        Assert.Equal(Encoding.UTF8.GetString(exported), Encoding.UTF8.GetString(ExportedOf(library, "2")));
        Assert.Throws<PlainException>(() => library.Open("latest"));
    }

    [Fact]
    public void An_import_changes_nothing_of_the_session()
    {
        var live = Play(2);
        var exported = Exported("1");
        Library.Import(exported, Voice);

        using var log = SqliteEventLog.OpenOrSalvage(Folder);
        Assert.Equal(live, log.Restore());
        Assert.Equal(live, Library.Open("latest").Show.Last);
        log.Append(live.Sequence, [new ShowBegun(Noon, "Next", 9, 9)]);
        Assert.Equal([1, 2, 3, 4], Library.List().Select(show => show.Id));
        Assert.Equal("Next", Library.List()[3].Title);
    }

    [Theory]
    [InlineData("\"digit\":5", "\"digit\":6", "hash")]
    [InlineData("strike-changed", "strike-thrown", "'strike-thrown'")]
    [InlineData("]}\n", "", "cut off after event 4 of 4")]
    public void What_is_not_a_whole_show_is_refused_and_nothing_is_written(string old, string changed, string reason)
    {
        Play(2);
        var rows = Count();
        var text = Encoding.UTF8.GetString(Exported("2"));
        Assert.Contains(old, text, StringComparison.Ordinal);

        var refusal = Assert.Throws<PlainException>(
            () => Library.Import(Encoding.UTF8.GetBytes(text.Replace(old, changed, StringComparison.Ordinal)), Voice));

        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(rows, Count());
    }

    [Fact]
    public void A_show_of_a_file_opens_by_its_path_and_a_cut_one_says_what_is_missing()
    {
        Play(2);
        var exported = Exported("2");
        var path = _temporary.In("evening.json");
        File.WriteAllBytes(path, exported);
        Assert.Equal((null, 4), (Library.Open(path).Warning, Library.Open(path).Show.Events.Length));

        File.WriteAllBytes(path, exported[..^30]);
        Assert.Contains("after event 3 of 4", Library.Open(path).Warning, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("99", "no show 99")]
    [InlineData("no-such-file.json", "readable show file")]
    [InlineData("0", "no show 0")]
    public void What_is_not_there_is_said_plainly(string name, string reason)
    {
        Play(1);

        Assert.Contains(reason, Assert.Throws<PlainException>(() => Library.Open(name)).Message, StringComparison.Ordinal);
        Assert.Contains("no show 99", Assert.Throws<PlainException>(() => Library.SetOffset(99, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("at most a day", Assert.Throws<PlainException>(() => Library.SetOffset(1, double.NaN)).Message, StringComparison.Ordinal);
    }

    public void Dispose() => _temporary.Dispose();

    private SessionState Play(int shows)
    {
        using var log = SqliteEventLog.Open(Folder);
        var state = SessionState.Initial;
        for (var show = 0; show < shows; show++)
        {
            var at = Noon.AddDays(show);
            Event[] begun = show == 0 ? [] : [new ShowBegun(at, $"Evening {show}", state.Entries, state.Loadings)];
            Event[] events =
            [
                .. begun,
                new PuzzleLoaded(at, Grids.EssayOne, $"Lanterns {show}", "", ""),
                new StrikeChanged(at.AddSeconds(5), CellSet.Of(Cell.At(0)), Digit.Of(5), IsStruck: true),
                new EntryUndone(at.AddSeconds(10)),
            ];
            log.Append(state.Sequence, events);
            state = events.Aggregate(state, Evolver.Evolve);
        }

        return state;
    }

    private byte[] Exported(string id) => ExportedOf(Library, id);

    private static byte[] ExportedOf(ShowLibrary library, string id)
    {
        using var output = new MemoryStream();
        library.Export(id, output);
        return output.ToArray();
    }

    private long Count()
    {
        using var connection = EventDatabase.Open(Folder);
        return connection.Number("SELECT (SELECT count(*) FROM event) * 1000 + (SELECT count(*) FROM show)")!.Value;
    }

    private void Run(string statements)
    {
        using var connection = EventDatabase.Connect(Folder.Events);
        connection.Run(statements);
    }
}
