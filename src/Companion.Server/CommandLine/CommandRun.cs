namespace Companion.Server.CommandLine;

/// <summary>Runs a command line. Whatever goes wrong is said in one plain sentence on the error stream, with the way out.</summary>
internal static class CommandRun
{
    /// <summary>Parses the words and does what they say.</summary>
    /// <param name="words">What was typed after the program's name.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="error">Where faults go.</param>
    /// <param name="time">The clock; the system's by default.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> Run(IReadOnlyList<string> words, TextWriter output, TextWriter error, TimeProvider? time = null)
    {
        var parsed = Commands.Root().Parse(words);
        if (parsed.Errors.Count > 0)
        {
            await error.WriteLineAsync($"{parsed.Errors[0].Message} 'companion --help' shows what can be asked.");
            return ExitCode.Usage;
        }

        try
        {
            return await parsed.InvokeAsync(new CommandStreams(time ?? TimeProvider.System)
            {
                Output = output,
                Error = error,
                EnableDefaultExceptionHandler = false,
            });
        }
        catch (OperationCanceledException)
        {
            await error.WriteLineAsync("Stopped; no file was written.");
            return ExitCode.Usage;
        }
        catch (PlainException plain)
        {
            await error.WriteLineAsync(plain.Message);
            return ExitCode.Usage;
        }
    }
}
