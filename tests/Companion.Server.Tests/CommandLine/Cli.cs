using Companion.Server.CommandLine;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.CommandLine;

/// <summary>Runs a command line as <c>Main</c> does, with its streams caught and a clock that stands still: no work takes long.</summary>
internal static class Cli
{
    public static async Task<(int ExitCode, string Output, string Error)> Run(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandRun.Run(words, output, error, new FakeTimeProvider());
        return (code, output.ToString(), error.ToString());
    }
}
