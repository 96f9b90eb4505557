using System.Collections.Immutable;
using System.Diagnostics;
using System.Text.Json;
using Companion.Server.Tests.Running;
using Companion.Sight.Samples;

namespace Companion.Server.Tests.AfterShow;

/// <summary>
/// Reads WebVTT with the W3C's parser and validator, <c>webvtt-parser</c>, which npm brings into <c>.artifacts</c>; where it cannot, each
/// test that needs it fails and says so.
/// </summary>
internal static class WebVttReader
{
    private static readonly Lazy<string> Installed = new(Install);

    private static string Readers => Repository.In("tests", "Companion.Server.Tests", "AfterShow", "Readers");

    /// <summary>Reads a file.</summary>
    /// <param name="kind">What it is: <c>chapters</c>, in whose text no tag may stand, or <c>captions</c>.</param>
    /// <param name="file">The file.</param>
    /// <returns>The cues in order, their text as a reader sees it, and what is wrong with the file.</returns>
    public static (ImmutableArray<Cue> Cues, ImmutableArray<string> Errors) Read(string kind, string file)
    {
        var start = new ProcessStartInfo("node", [Path.Combine(Readers, "webvtt.cjs"), kind, Path.GetFullPath(file)])
        {
            WorkingDirectory = Installed.Value,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var node = Process.Start(start)!;
        var errors = node.StandardError.ReadToEndAsync();
        var output = node.StandardOutput.ReadToEnd();
        node.WaitForExit();
        if (node.ExitCode != 0)
            throw new InvalidOperationException($"The WebVTT parser could not read {file}. It said: {errors.Result.Trim()}");
        using var read = JsonDocument.Parse(output);
        return (
            [.. read.RootElement.GetProperty("cues").EnumerateArray().Select(cue => new Cue(
                cue.GetProperty("startTime").GetDouble(), cue.GetProperty("endTime").GetDouble(), cue.GetProperty("text").GetString()!))],
            [.. read.RootElement.GetProperty("errors").EnumerateArray().Select(error => error.GetString()!)]);
    }

    private static string Install()
    {
        var folder = Repository.In(".artifacts", "readers");
        NpmPackages.Install(Readers, folder);
        return folder;
    }

    /// <summary>A cue as it was read.</summary>
    /// <param name="Start">When it begins, in seconds.</param>
    /// <param name="End">When it ends.</param>
    /// <param name="Text">Its text.</param>
    public sealed record Cue(double Start, double End, string Text);
}
