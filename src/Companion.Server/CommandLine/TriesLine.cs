using System.Globalization;

namespace Companion.Server.CommandLine;

/// <summary>Says now and then how far the making of puzzles has come, so that nobody takes long work for a program that hangs.</summary>
/// <param name="error">Where to; results go elsewhere.</param>
/// <param name="made">How many puzzles were made so far.</param>
internal sealed class TriesLine(TextWriter error, Func<int> made) : IProgress<long>
{
    // Some seconds of work.
    private const long Between = 8_192;

    private long _next = Between;

    /// <inheritdoc/>
    public void Report(long value)
    {
        if (value < _next)
            return;
        _next = value + Between;
        error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{value:N0} puzzles tried, {made()} as wanted."));
    }
}
