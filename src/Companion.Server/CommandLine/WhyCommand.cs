using System.CommandLine;
using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion why</c>: why a digit is, or cannot be, in a cell.</summary>
internal static class WhyCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var position = new PositionOptions();
        var question = new Argument<string>("question") { Description = "r4c7=5 for why r4c7 is 5; r4c7-5 for why r4c7 cannot be 5." };
        var lastResorts = new Option<bool>("--last-resorts") { Description = "Try the rules of the last resort too, which may take long." };
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object instead of text: grid, cell, digit, answer (stands, filled by another digit, seen by an equal "
                + "one, or by the only solution goes or cannotBe), text, proved (null where no proof is needed), cost, upTo (the last rule "
                + "tried, where nothing is proved), atOnce (a harder deduction that gives it in one step, or null) and steps, each as in scan.",
        };
        var options = new LadderOptions();
        var command = new Command("why",
            "Says why a digit is, or cannot be, in a cell, step by step by the easiest proof: the hardest rule as low on the ladder as can "
            + "be, then the least total cost. The position must have exactly one solution.");
        position.AddTo(command);
        command.Add(question);
        command.Add(lastResorts);
        command.Add(json);
        options.AddTo(command);
        command.SetAction(asked =>
        {
            var ladder = options.Whole(asked);
            return Run(
                position.Read(asked),
                Question.Read(asked.GetRequiredValue(question)),
                options.Cut(asked, ladder),
                asked.GetValue(lastResorts) ? Effort.LastResort : Effort.Search,
                ShippedFiles.Wording(ladder),
                asked.GetValue(json),
                asked.InvocationConfiguration);
        });
        return command;
    }

    private static int Run(
        GridDraft draft, Question question, Ladder ladder, Effort most, Wording wording, bool json, InvocationConfiguration streams)
    {
        // From a board that has no solution everything follows, and of one that has several nothing may be said to be right.
        var reading = Puzzle.Read(draft);
        if (!reading.IsGood)
            return PositionOptions.Refuse(draft, reading.Faults, streams.Error);
        var seen = reading.Value.Board;
        var bare = Board.Read(draft with { Removed = CandidateSet.Empty }).Value!;
        var rules = LadderOptions.For(seen, ladder);
        var reason = CellReason.Of(
            seen, bare, reading.Value.Solution, question.Asked, (board, target) => Attribution.Of(board, target, rules, most));
        var result = WhyResult.Of(seen, question, reason, wording);
        if (json)
            streams.Output.WriteLine(JsonSerializer.Serialize(result, WireJson.Options));
        else
            WriteText(result, streams.Output);
        return ExitCode.Fine;
    }

    private static void WriteText(WhyResult result, TextWriter output)
    {
        output.WriteLine(result.Text);
        for (var index = 0; index < result.Steps.Length; index++)
            output.WriteLine($"{index + 1,4}  {result.Steps[index].Text}");
        if (result.AtOnce is { } atOnce)
            output.WriteLine($"{"or",4}  {atOnce.Text}");
    }
}
