using System.CommandLine;
using Companion.Server.Data;

namespace Companion.Server.CommandLine;

/// <summary>Where a command writes its text: a file, or what it prints.</summary>
internal sealed class TextOutput
{
    private readonly Option<string?> _output = new("--out") { Description = "The file to write; printed by default.", HelpName = "file" };

    /// <summary>Gives a command this option.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command) => command.Add(_output);

    /// <summary>Writes the text.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="text">The text.</param>
    /// <param name="cancel">Leaves the file as it was.</param>
    /// <returns>What the command leaves behind.</returns>
    /// <exception cref="PlainException">The file cannot be written.</exception>
    public int Write(ParseResult asked, string text, CancellationToken cancel)
    {
        if (asked.GetValue(_output) is { } name)
            OutputFile.At(name, _output.Name).Write(text, cancel);
        else
            asked.InvocationConfiguration.Output.Write(text);
        return ExitCode.Fine;
    }
}
