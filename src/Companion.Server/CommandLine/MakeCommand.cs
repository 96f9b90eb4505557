using System.CommandLine;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion make</c>: puzzles of our own.</summary>
internal static class MakeCommand
{
    private const string NoSymmetry = "none";

    private static readonly string[] Symmetries = [NoSymmetry, .. GridSymmetries.All.Select(NameOf)];

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var featured = FeatureOption.Make("A rule that each puzzle must need; may be given several times.");
        var symmetry = PlainOption.Of(
            "--symmetry",
            $"How the givens lie: {string.Join(", ", Symmetries)}; half-turn by default. With none the puzzles are minimal.",
            name => Symmetries.FirstOrDefault(known => known == name),
            $"one of {string.Join(", ", Symmetries)}");
        var clues = PlainOption.Number("--clues", "Leave this many givens, and more where none can go any more; as few as can be by default. It says where there are more.", 17, 80);
        var seed = SeedOption.Make(
            "The same makes the same puzzles again, the first of them from this number itself; each puzzle's own number makes it again alone. "
            + "One at random by default.");
        var count = PlainOption.Number("--count", "How many; 1 by default.", 1, 1_000_000);
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object a puzzle: puzzle, solution, clues, seed (with it and the same options make gives this puzzle first), hardest and grade (word, work, rounds, gates).",
        };
        var options = new LadderOptions();
        var command = new Command(
            "make",
            "Makes puzzles with one solution, a line each: the grid, and after tabs its givens, its grade, the hardest rule it needs and its seed. No "
            + "rule of the last resort is needed unless --stop-at names one. Ctrl+C stops it.")
        {
            featured, symmetry, clues, seed, count, json,
        };
        options.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var whole = options.Whole(asked);
            var ladder = options.IsCut(asked) ? options.Cut(asked, whole) : options.Cut(asked, whole).WithoutLastResorts();
            var order = new Order(
                ladder,
                new() { Symmetry = SymmetryOf(asked.GetValue(symmetry) ?? NameOf(GridSymmetry.HalfTurn)), Clues = asked.GetValue(clues) ?? 0 },
                FeatureOption.Read(asked.GetValue(featured)!, ladder));
            var wording = ShippedFiles.Wording(whole);
            return Task.FromResult(Run(
                order,
                asked.GetValue(seed) ?? BitConverter.ToUInt64(RandomNumberGenerator.GetBytes(sizeof(ulong))),
                asked.GetValue(count) ?? 1,
                asked.GetValue(clues),
                made => asked.GetValue(json)
                    ? JsonSerializer.Serialize(MadeResult.Of(made), WireJson.Options)
                    : MadeResult.Of(made).Line(wording),
                asked.InvocationConfiguration,
                cancel));
        });
        return command;
    }

    private static int Run(
        Order order, ulong seed, int count, int? clues, Func<MadePuzzle, string> write, InvocationConfiguration streams, CancellationToken cancel)
    {
        var (made, over, tried) = (0, 0, new Tally());
        using var work = LongWork.Begin(
            streams, "Making puzzles", () => Progress(tried.Value, made));
        try
        {
            foreach (var puzzle in PuzzleMaker.Make(order, seed, Environment.ProcessorCount, tried, cancel: cancel).Take(count))
            {
                made++;
                over += puzzle.Puzzle.Board.Givens.Count > clues ? 1 : 0;
                streams.Output.WriteLine(write(puzzle));
            }

            if (over > 0)
                streams.Error.WriteLine(More(over, made, clues!.Value, order.Shape.Symmetry));
            return ExitCode.Fine;
        }
        catch (OperationCanceledException)
        {
            streams.Error.WriteLine($"Stopped; {made} of {count} were made.");
            return ExitCode.Usage;
        }
    }

    private static string More(int over, int made, int clues, GridSymmetry? symmetry) =>
        $"{(made == 1 ? "It has" : $"{over} of {made} have")} more than {clues} givens: "
        + (symmetry is null
            ? "with any of them gone there are several solutions."
            : $"what lies together by the symmetry goes together, and with any more of it gone there are several solutions or fewer than {clues} givens.");

    // Before the first turn is over nothing is counted yet.
    private static string Progress(long tried, int made) => tried == 0
        ? "looking"
        : string.Create(CultureInfo.InvariantCulture, $"{tried:N0} tried, {made} as wanted");

    private static string NameOf(GridSymmetry symmetry) => JsonNamingPolicy.KebabCaseLower.ConvertName(symmetry.ToString());

    private static GridSymmetry? SymmetryOf(string name) =>
        name == NoSymmetry ? null : GridSymmetries.All.First(symmetry => NameOf(symmetry) == name);
}
