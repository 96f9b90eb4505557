using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Server.AfterShow;
using Companion.Server.CommandLine;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Tests.AfterShow;
using Companion.Server.Tests.Running;
using Companion.Session.AfterShow;
using Companion.Session.Boards;
using Companion.Session.Events;
using Companion.Session.Shows;

namespace Companion.Server.Tests.CommandLine;

public sealed class SheetCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Theory]
    [InlineData("xy-wing")]
    [InlineData("x-wing")]
    [InlineData("naked-triple")]
    [InlineData("simple-colouring")]
    public async Task A_scan_of_each_position_finds_the_rule_first_and_the_answer_under_it(string rule)
    {
        var positions = await Positions("sheet", "--rule", rule, "--count", "3", "--seed", "4");

        Assert.Equal(3, positions.Select(position => position.GetProperty("grid").GetString()).Distinct().Count());
        foreach (var position in positions)
        {
            var (grid, gone) = (position.GetProperty("grid").GetString()!, Names(position.GetProperty("gone")));
            var (_, output, _) = await Cli.Run("scan", grid, "--without", gone, "--json");
            using var scan = JsonDocument.Parse(output);
            var open = scan.RootElement.GetProperty("deductions").EnumerateArray().ToList();
            var its = open.FindAll(deduction => deduction.GetProperty("rule").GetString() == rule);

            Assert.Equal(rule, open[0].GetProperty("rule").GetString());
            Assert.Equal(its.Count - 1, position.GetProperty("others").GetInt32());
            Assert.Contains(Names(position.GetProperty("removes")), its.Select(deduction => Names(deduction.GetProperty("removes"))));
            // Counted by brute force, which knows no rule: without what the answer removes the solution is still there.
            var solution = Puzzle.Parse(grid).Solution;
            Assert.All(CandidateSet.Parse(Names(position.GetProperty("removes"))), candidate => Assert.False(solution.Holds(candidate)));
        }
    }

    [Fact]
    public async Task The_same_seed_gives_the_same_sheet_and_another_one_another()
    {
        var one = await Cli.Run("sheet", "--rule", "xy-wing", "--count", "2", "--seed", "1");

        Assert.Equal(one, await Cli.Run("sheet", "--rule", "xy-wing", "--count", "2"));
        Assert.NotEqual(one, await Cli.Run("sheet", "--rule", "xy-wing", "--count", "2", "--seed", "2"));
        Assert.Matches(@"^ +1  [1-9.]{81}( --without (r\dc\d=\d,?)+)?\n +2  .*\nAnswers:\n +1  XY-wing on .* → .*\n +2  .*\n$", one.Output);
    }

    [Fact]
    public async Task Without_marks_nothing_has_to_be_known_beyond_the_digits()
    {
        var positions = await Positions("sheet", "--rule", "naked-pair", "--count", "4", "--without-marks");

        Assert.All(positions, position => Assert.Equal(0, position.GetProperty("gone").GetArrayLength()));
    }

    [Fact]
    public async Task Positions_come_from_the_puzzles_of_a_file_each_from_another_line()
    {
        await Made("made.txt", "xy-wing", 4);
        var positions = await Positions("sheet", "--rule", "xy-wing", "--count", "3", "--from", _folder.In("made.txt"));

        Assert.Equal(["line 1", "line 2", "line 3"], positions.Select(position => position.GetProperty("source").GetString()));
        var lines = await File.ReadAllLinesAsync(_folder.In("made.txt"), TestContext.Current.CancellationToken);
        Assert.All(positions.Zip(lines), pair => Assert.All(
            pair.Second[..81].Zip(pair.First.GetProperty("grid").GetString()!),
            digits => Assert.True(digits.First is '.' || digits.First == digits.Second)));
    }

    // The demo's puzzle solved by the easiest step each time: before the wing is used nothing easier is open.
    [Theory]
    [InlineData("latest")]
    [InlineData("1")]
    [InlineData("show.json")]
    public async Task Positions_come_from_a_stored_show_with_the_time_at_which_each_stood(string from)
    {
        var wing = new RuleId("xy-wing");
        var show = MadeShow.Whole();
        Keep(show);
        await Cli.Run("shows", "export", "1", "--out", _folder.In("show.json"), "--data", _folder.Path);

        var positions = await Positions("sheet", "--rule", "xy-wing", "--from", from == "show.json" ? _folder.In(from) : from, "--data", _folder.Path);

        Assert.InRange(positions.Count, 1, 6);
        foreach (var position in positions.Where(position => position.GetProperty("source").GetString() != "on the way through the puzzle"))
        {
            var moment = show.Moments.First(moment => $"at {VideoClock.Of(VideoTime.Near(show, moment))}" == position.GetProperty("source").GetString()
                && BoardText.Write(KnownBoard.Of(moment.State).Value!) == position.GetProperty("grid").GetString());
            var open = MadeShow.Ladder.UpTo(wing).Scan(KnownBoard.Of(moment.State).Value!, TestContext.Current.CancellationToken);
            Assert.Equal(wing, open[0].Rule);
        }

        Assert.StartsWith("at ", positions[0].GetProperty("source").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_show_that_does_not_have_as_many_says_how_many_there_are()
    {
        Keep(MadeShow.Whole());
        var (code, output, error) = await Cli.Run("sheet", "--rule", "xy-wing", "--count", "60", "--from", "latest", "--data", _folder.Path);
        Assert.Equal((2, ""), (code, output));
        Assert.Matches(@"^There (is only 1 such position|are only \d+ such positions) in the show or on the way through its puzzles, and 60 are wanted: name another show or a file of puzzles, or ask for fewer with --count\.\n$", error);

        (code, output, error) = await Cli.Run("sheet", "--rule", "jellyfish", "--from", "latest", "--data", _folder.Path);
        Assert.Equal((2, ""), (code, output));
        Assert.Equal("There is no such position in the show or on the way through its puzzles: name another show or a file of puzzles.\n", error);

        (code, output, error) = await Cli.Run("sheet", "--rule", "xy-wing", "--from", "7", "--data", _folder.Path);
        Assert.Equal((2, "", "There is no show 7: 'companion shows' lists them.\n"), (code, output, error));
    }

    [Fact]
    public async Task Nothing_is_practised_on_a_board_that_is_wrong()
    {
        var show = MadeShow.Whole();
        var loaded = (PuzzleLoaded)show.Events[0];
        var solution = Puzzle.Parse(loaded.Grid).Solution;
        // A true candidate is struck and stays so: all boards of the show are wrong from then on.
        var cell = Puzzle.Parse(loaded.Grid).Board.Open.First;
        Keep(StoredShow.Replay([loaded, new StrikeChanged(loaded.At, CellSet.Of(cell), solution[cell], IsStruck: true), .. show.Events.Skip(1)]));

        var positions = await Positions("sheet", "--rule", "xy-wing", "--from", "latest", "--data", _folder.Path);

        Assert.All(positions, position => Assert.Equal("on the way through the puzzle", position.GetProperty("source").GetString()));
    }

    [Fact]
    public async Task A_position_may_stand_in_the_file_itself()
    {
        var position = (await Positions("sheet", "--rule", "naked-pair", "--count", "1", "--without-marks"))[0].GetProperty("grid").GetString()!;
        await File.WriteAllTextAsync(_folder.In("positions.txt"), position + "\n", TestContext.Current.CancellationToken);

        var found = Assert.Single(await Positions("sheet", "--rule", "naked-pair", "--count", "1", "--from", _folder.In("positions.txt")));

        Assert.Equal(position, found.GetProperty("grid").GetString());
    }

    [Fact]
    public async Task Where_there_are_too_few_it_says_how_many_there_are()
    {
        await Made("made.txt", "xy-wing", 1);
        var (code, output, error) = await Cli.Run(
            "sheet", "--rule", "jellyfish", "--from", _folder.In("made.txt"), "--pdf", _folder.In("sheet.pdf"));

        Assert.Equal((2, ""), (code, output));
        Assert.Equal("There is no such position in the 1 puzzles of the file: name a file with more of them.", error.Trim());
        Assert.False(File.Exists(_folder.In("sheet.pdf")));
    }

    [Fact]
    public async Task Lines_that_are_no_puzzles_are_named_and_the_sheet_is_made_of_the_others()
    {
        await Made("made.txt", "xy-wing", 1);
        var made = await File.ReadAllTextAsync(_folder.In("made.txt"), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(_folder.In("mixed.txt"), "55\n" + made, TestContext.Current.CancellationToken);
        var (code, output, error) = await Cli.Run("sheet", "--rule", "xy-wing", "--count", "1", "--from", _folder.In("mixed.txt"));

        Assert.Equal(1, code);
        Assert.StartsWith("Line 1: ", error, StringComparison.Ordinal);
        Assert.Contains("Answers:\n", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(400, 0, "400 puzzles made, 0 of 6 found")]
    [InlineData(6_000, 2, "6,000 puzzles made, 2 of 6 found")]
    [InlineData(
        6_000,
        0,
        "6,000 puzzles made, 0 of 6 found; the rule is rarely needed beside easier ones: leave out families of them with --without-family, or name a file of puzzles with --from")]
    public void Of_a_rare_rule_it_is_said_early_what_to_do(long tried, int found, string said) =>
        Assert.Equal(said, PositionSearch.SoFar(tried, found, 6));

    // What that advice is worth: with all rules none was found in 20,000 puzzles.
    [Fact]
    public async Task Without_families_of_easier_rules_a_rare_rule_is_found()
    {
        string[] families = ["wings", "single-digit patterns", "chains", "uniqueness"];
        var position = Assert.Single(await Positions(
            ["sheet", "--rule", "jellyfish", "--count", "1", "--seed", "3", .. families.SelectMany(family => new[] { "--without-family", family })]));

        Assert.StartsWith("Jellyfish on ", position.GetProperty("short").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--rule", "magic")]
    [InlineData("--count", "0")]
    [InlineData("--from", "no-such-file")]
    [InlineData("--html", "no/such/folder.html")]
    public async Task What_cannot_be_made_is_refused_in_one_sentence(string option, string value)
    {
        string[] rule = option == "--rule" ? [] : ["--rule", "xy-wing"];
        var (code, output, error) = await Cli.Run(["sheet", .. rule, option, value]);

        Assert.Equal((2, ""), (code, output));
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    public void Dispose() => _folder.Dispose();

    private void Keep(StoredShow show)
    {
        using var log = SqliteEventLog.Open(DataFolder.Open(_folder.Path));
        log.Append(0, show.Events);
    }

    private static async Task<List<JsonElement>> Positions(params string[] words)
    {
        var (code, output, error) = await Cli.Run([.. words, "--json"]);
        Assert.Equal((0, ""), (code, error));
        using var sheet = JsonDocument.Parse(output);
        return [.. sheet.RootElement.GetProperty("positions").EnumerateArray().Select(position => position.Clone())];
    }

    private async Task Made(string file, string rule, int count)
    {
        var (_, output, _) = await Cli.Run("make", "--feature", rule, "--count", $"{count}", "--seed", "9");
        await File.WriteAllTextAsync(_folder.In(file), output, TestContext.Current.CancellationToken);
    }

    private static string Names(JsonElement candidates) => string.Join(',', candidates.EnumerateArray().Select(candidate =>
        $"{candidate.GetProperty("cell").GetString()}={candidate.GetProperty("digit").GetInt32()}"));
}
