using System.CommandLine;
using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion scan</c>: every open deduction of a position.</summary>
internal static class ScanCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var position = new PositionOptions();
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object instead of text: grid (81 characters) and deductions, each with rule, cells (cell, role), digits, "
                + "restsOn (absent candidates that it relies on), places, removes (each cell, digit) and text.",
        };
        var options = new LadderOptions();
        var command = new Command("scan", "Lists every open deduction of a position, easiest first.");
        position.AddTo(command);
        command.Add(json);
        options.AddTo(command);
        command.SetAction(asked =>
        {
            var ladder = options.Whole(asked);
            return Run(
                position.Read(asked),
                options.Cut(asked, ladder),
                ShippedFiles.Wording(ladder),
                asked.GetValue(json),
                asked.InvocationConfiguration);
        });
        return command;
    }

    private static int Run(GridDraft draft, Ladder ladder, Wording wording, bool json, InvocationConfiguration streams)
    {
        var reading = Board.Read(draft);
        if (!reading.IsGood)
            return PositionOptions.Refuse(draft, reading.Faults, streams.Error);

        var found = LadderOptions.For(reading.Value, ladder).Scan(reading.Value);
        if (json)
            streams.Output.WriteLine(JsonSerializer.Serialize(ScanResult.Of(reading.Value, found, wording), WireJson.Options));
        else
            WriteText(reading.Value, found, wording, streams.Output);
        return ExitCode.Fine;
    }

    private static void WriteText(Board board, Findings found, Wording wording, TextWriter output)
    {
        for (var index = 0; index < found.Count; index++)
            output.WriteLine($"{index + 1,4}  {wording.HintsFor(board, found[index]).Why.Words.Written}");
        if (found.Count == 0)
            output.WriteLine(board.IsFull ? "The grid is full." : "No rule of the ladder finds anything here.");
    }
}
