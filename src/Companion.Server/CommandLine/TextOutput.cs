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
    /// <param name="make">Makes the text; it is not asked where the file cannot be written.</param>
    /// <param name="cancel">Leaves the file as it was.</param>
    /// <returns>What the command leaves behind.</returns>
    /// <exception cref="PlainException">The file cannot be written.</exception>
    public int Write(ParseResult asked, Func<string> make, CancellationToken cancel)
    {
        var (file, printed) = (asked.GetValue(_output) is { } name ? OutputFile.At(name, _output.Name) : null, asked.InvocationConfiguration.Output);
        var text = make();
        if (file is null)
        {
            printed.Write(text);
            return ExitCode.Fine;
        }

        file.Write(text, cancel);
        file.Report(printed);
        return ExitCode.Fine;
    }
}
