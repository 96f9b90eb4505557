using System.CommandLine;
using System.Text.Json;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion check</c>: what each puzzle of a file is worth.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var file = new Argument<string>("file")
        {
            Description = "A puzzle a line, 81 characters, what follows a tab is left out; empty lines and lines that begin with # are "
                + "skipped. A hyphen reads what is piped in.",
        };
        var json = new Option<bool>("--json") { Description = "One JSON object a line instead of text." };
        var command = new Command("check", "Counts solutions, says whether a puzzle is minimal, and how far easy rules get.") { file, json };
        command.SetAction(asked => Run(asked.GetRequiredValue(file), asked.GetValue(json), asked.InvocationConfiguration.Output));
        return command;
    }

    private static int Run(string file, bool json, TextWriter output)
    {
        var areAllGood = true;
        using var reader = Open(file);
        foreach (var result in Puzzles(reader).AsParallel().AsOrdered().Select(line => CheckResult.Of(line.Number, line.Text)))
        {
            areAllGood &= result.Solutions == 1;
            output.WriteLine(json ? JsonSerializer.Serialize(result, WireJson.Options) : result.ToString());
        }

        return areAllGood ? ExitCode.Fine : ExitCode.BadPuzzle;
    }

    private static IEnumerable<(int Number, string Text)> Puzzles(TextReader reader)
    {
        var number = 0;
        while (reader.ReadLine() is { } line)
        {
            number++;
            var text = line.Split('\t')[0];
            if (!string.IsNullOrWhiteSpace(text) && !text.StartsWith('#'))
                yield return (number, text);
        }
    }

    private static TextReader Open(string file)
    {
        if (file == "-")
            return Console.In;
        try
        {
            return File.OpenText(file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new PlainException($"The file {file} cannot be read: name one that is there, or - for what is piped in.", fault);
        }
    }
}
