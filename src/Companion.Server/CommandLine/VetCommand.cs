using System.CommandLine;
using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.Planning;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion vet</c>: what a presenter must know of a puzzle before the show.</summary>
internal static class VetCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var file = new Argument<string>("file") { Description = PuzzleFile.Layout, HelpName = "file|grid|-" };
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object a puzzle: puzzle, solutions (0, 1, or 2 for more than one), clues, redundant (givens that follow "
                + "from the others, each by itself), symmetries, hardest, grade (word, work, rounds, gates), rules (hardest first: rule, name, "
                + "cost, rounds), featured (rule, name, need: spare, needed, late or never, board, instead), corrections (cell, from, to), "
                + "faults and sentences.",
        };
        var featured = FeatureOption.Make("A rule that the puzzle is to show: says whether it is needed; may be given several times.");
        var options = new LadderOptions();
        var command = new Command(
            "vet", "Says whether a puzzle is sound, minimal and symmetric, how hard it is, what it needs, and where it may be mistyped.")
        {
            file, featured, json,
        };
        options.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var whole = options.Whole(asked);
            var ladder = options.Cut(asked, whole);
            var rules = FeatureOption.Read(asked.GetValue(featured)!, ladder);
            return Task.FromResult(Run(
                asked.GetRequiredValue(file),
                (draft, cores) => Vetting.Of(draft, ladder, rules, cores, cancel),
                ShippedFiles.Wording(whole),
                asked.GetValue(json),
                asked.InvocationConfiguration.Output));
        });
        return command;
    }

    private static int Run(string file, Func<GridDraft, int, Vetting> vet, Wording wording, bool json, TextWriter output)
    {
        using var reader = PuzzleFile.Open(file);
        var puzzles = PuzzleFile.Grids(reader);
        if (puzzles.Count == 0)
            throw PuzzleFile.Empty(file);
        var areAllGood = true;
        var coresOfEach = puzzles.Count == 1 ? Environment.ProcessorCount : 1;
        foreach (var (line, vetting) in puzzles.AsParallel().AsOrdered()
            .Select(puzzle => (puzzle.Line, vet(BoardText.Read(puzzle.Text), coresOfEach))))
        {
            areAllGood &= vetting.Solutions == 1;
            var result = VetResult.Of(vetting, wording);
            if (json)
                output.WriteLine(JsonSerializer.Serialize(result, WireJson.Options));
            else
                WriteText(puzzles.Count > 1 ? line : null, result, output);
        }

        return areAllGood ? ExitCode.Fine : ExitCode.BadPuzzle;
    }

    private static void WriteText(int? line, VetResult result, TextWriter output)
    {
        if (line is { } number)
            output.WriteLine($"{number,6}  {result.Puzzle}");
        var indent = line is null ? "" : new string(' ', 8);
        foreach (var sentence in result.Sentences)
            output.WriteLine(indent + sentence);
    }
}
