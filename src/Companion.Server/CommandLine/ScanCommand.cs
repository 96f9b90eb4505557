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
        var grid = new Argument<string>("grid") { Description = "The position: 81 characters row by row, or nine lines of nine." };
        var without = new Option<string>("--without")
        {
            Description = "Candidates that are gone beyond what the digits take out, as in r1c2=3,r4c7=5.",
        };
        var json = new Option<bool>("--json") { Description = "One JSON object instead of text." };
        var command = new Command("scan", "Lists every open deduction of a position, easiest first.") { grid, without, json };
        command.SetAction(asked => Run(
            asked.GetRequiredValue(grid), asked.GetValue(without), asked.GetValue(json), asked.InvocationConfiguration));
        return command;
    }

    private static int Run(string grid, string? without, bool json, InvocationConfiguration streams)
    {
        var draft = BoardText.Read(grid) with { Removed = ReadCandidates(without) };
        var reading = Board.Read(draft);
        if (!reading.IsGood)
        {
            foreach (var fault in reading.Faults)
                streams.Error.WriteLine(fault.Sentence);
            return ExitCode.BadPuzzle;
        }

        var found = Ladder.Standard.Scan(reading.Value);
        var wording = ShippedFiles.Wording();
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

    private static CandidateSet ReadCandidates(string? text)
    {
        try
        {
            return CandidateSet.Parse(text ?? "");
        }
        catch (FormatException fault)
        {
            throw new PlainException(fault.Message, fault);
        }
    }
}
