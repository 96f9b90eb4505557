using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.Planning;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion route</c>: the run sheet of a puzzle.</summary>
internal static class RouteCommand
{
    private const int MostPoints = 12;

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var position = new PositionOptions();
        var featured = FeatureOption.Make("A rule that the route is to show; may be given several times.");
        var early = new Option<bool>("--early") { Description = "Show the featured rules as soon as they are open; as late as they can be by default." };
        var words = PlainOption.Number("--words-per-minute", "How fast you speak; 150 by default.", SpeakingRate.Slowest, SpeakingRate.Fastest);
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object: grid, isComplete, seconds, passages (title, first, last, at, seconds), steps (number, at, seconds, "
                + "rule, name, places, removes, isGate, isFeatured, short, text), featured (rule, name, step, others) and talkingPoints (step, oneIn, text; the rarest first).",
        };
        var options = new LadderOptions();
        var command = new Command(
            "route", "Plans the way through a puzzle in the order in which a person would work, with a running clock: the run sheet.");
        position.AddTo(command);
        command.Add(featured);
        command.Add(early);
        command.Add(words);
        command.Add(json);
        options.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var whole = options.Whole(asked);
            var wording = ShippedFiles.Wording(whole);
            var ladder = options.Cut(asked, whole);
            var features = FeatureOption.Read(asked.GetValue(featured)!, ladder)
                .Select(rule => new Feature(rule, asked.GetValue(early) ? Timing.Early : Timing.Late));
            return Task.FromResult(Run(
                position.Read(asked),
                board => RunSheet.Of(
                    RunPlan.From(board, ladder, features, cancel: cancel),
                    wording,
                    SpeakingRate.Of(asked.GetValue(words) ?? SpeakingRate.Usual),
                    ShippedFiles.Rarity()),
                asked.GetValue(json),
                asked.InvocationConfiguration));
        });
        return command;
    }

    private static int Run(GridDraft draft, Func<Board, RunSheet> plan, bool json, InvocationConfiguration streams)
    {
        var reading = Puzzle.Read(draft);
        if (!reading.IsGood)
            return PositionOptions.Refuse(reading.Faults, streams.Error);
        var sheet = plan(reading.Value.Board);
        if (json)
            streams.Output.WriteLine(JsonSerializer.Serialize(sheet, WireJson.Options));
        else
            WriteText(sheet, streams.Output);
        return sheet.IsComplete ? ExitCode.Fine : ExitCode.BadPuzzle;
    }

    private static void WriteText(RunSheet sheet, TextWriter output)
    {
        foreach (var passage in sheet.Passages)
        {
            output.WriteLine($"{Clock(passage.At),6}  {passage.Title} ({Clock(passage.Seconds)})");
            foreach (var step in sheet.Steps[(passage.First - 1)..passage.Last])
                output.WriteLine($"{step.Number,12}  {(step.IsGate ? "gate " : "")}{step.Short}");
        }

        output.WriteLine($"{Clock(sheet.Seconds),6}  {(sheet.IsComplete ? "The grid is full." : "The ladder leads no further.")}");
        foreach (var featured in sheet.Featured)
        {
            output.WriteLine(featured.Step is { } step
                ? $"{featured.Name}: step {step}{Others(featured)}."
                : $"{featured.Name}: open nowhere on this route.");
        }

        if (!sheet.TalkingPoints.IsEmpty)
            output.WriteLine("Worth saying, the rarest first:");
        foreach (var point in sheet.TalkingPoints.Take(MostPoints))
            output.WriteLine($"{point.Step,12}  {point.Text}");
    }

    private static string Others(RunSheet.FeaturedLine featured) => featured.Others.IsEmpty
        ? ""
        : $"; also open: {string.Join("; ", featured.Others.Select(other =>
            $"{string.Join(' ', other.Cells)} before step {other.FromStep}{(other.FromStep == other.ToStep ? "" : $" to {other.ToStep}")}"))}";

    private static string Clock(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{(int)seconds / 60}:{(int)seconds % 60:00}");
}
