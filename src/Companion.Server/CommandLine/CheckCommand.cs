using System.CommandLine;
using System.Text.Json;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion check</c>: what each puzzle of a file is worth.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var file = new Argument<string>("file") { Description = PuzzleFile.Layout, HelpName = "file|grid|-" };
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object a line instead of text: line (from 1), puzzle, solutions (0, 1, or 2 for more than one), solution "
                + "and minimal (null unless there is exactly one), clues, candidatesAtStart (after the givens' direct eliminations), "
                + "filledAfterSingles and candidatesAfterSingles (naked and hidden singles as far as they lead), candidatesAfterLocked "
                + "(these and locked candidates), and faults where the line is no puzzle. Then hardest (the hardest rule needed, null where "
                + "the ladder does not solve it), grade: word (flat, sloping, steep, sheer; unclimbed where the ladder does not solve it), work "
                + "(how much there is to look at; harder rules and fewer ways on count more), rounds (in each, all that the easiest open rule "
                + "finds is carried out) and gates (rounds with only one way on, but for the last full houses), and steps, each with rule, places, removes and text.",
        };
        var grade = new Option<bool>("--grade") { Description = "In the text also how hard each puzzle is, and the hardest rule that it needs." };
        var counts = new Option<bool>("--counts") { Description = "In the JSON only the counts, without hardest, grade and steps: many times as fast." };
        var options = new LadderOptions();
        var command = new Command("check", "Counts solutions, says whether a puzzle is minimal, and how far easy rules get.")
        {
            file, json, grade, counts,
        };
        options.AddTo(command);
        command.SetAction(asked => Run(
            asked.GetRequiredValue(file),
            asked.GetValue(json),
            (asked.GetValue(json) ? !asked.GetValue(counts) : asked.GetValue(grade))
                ? Grader(options, asked, withSteps: asked.GetValue(json))
                : result => result,
            asked.InvocationConfiguration.Output));
        return command;
    }

    private static Func<CheckResult, CheckResult> Grader(LadderOptions options, ParseResult asked, bool withSteps)
    {
        var whole = options.Whole(asked);
        var ladder = options.Cut(asked, whole);
        var wording = ShippedFiles.Wording(whole);
        return result => GradedResult.Of(result, ladder, wording, withSteps);
    }

    private static int Run(string file, bool json, Func<CheckResult, CheckResult> complete, TextWriter output)
    {
        var (areAllGood, isAny) = (true, false);
        using var reader = PuzzleFile.Open(file);
        var results = PuzzleFile.Lines(reader).AsParallel().AsOrdered().Select(line => complete(CheckResult.Of(line.Line, line.Text)));
        foreach (var result in results)
        {
            (areAllGood, isAny) = (areAllGood && result.Solutions == 1, true);
            output.WriteLine(json ? JsonSerializer.Serialize<object>(result, WireJson.Options) : result.ToString());
        }

        if (!isAny)
            throw PuzzleFile.Empty(file);
        return areAllGood ? ExitCode.Fine : ExitCode.BadPuzzle;
    }
}
