using Companion.Engine;
using Companion.Engine.Search;
using Companion.Engine.Tests.Corpus;

namespace Companion.Benchmarks;

/// <summary>
/// What is measured on: puzzles with 17 clues from the open data beside the repository (G. Royle's collection) or, where the folder
/// is absent, minimal ones of our own generator, which are easier and not comparable.
/// </summary>
internal static class Puzzles
{
    private const string FileName = "seventeen-clue.txt";

    private static readonly string[] Lines = FindFile() is { } file ? File.ReadAllLines(file) : Generate();

    /// <summary>Which of the two it is, in one sentence.</summary>
    internal static string Description => FindFile() is null
        ? $"shared/data/{FileName} is absent: measured on {Lines.Length} minimal puzzles of our own generator instead."
        : $"Measured on {FileName}, {Lines.Length} puzzles.";

    /// <summary>Puzzles from all over the list, evenly spaced, as 81 characters each.</summary>
    internal static string[] Sample(int count)
    {
        count = Math.Min(count, Lines.Length);
        return [.. Enumerable.Range(0, count).Select(i => Lines[(long)i * Lines.Length / count])];
    }

    /// <summary>Every board on the solving paths of a sample of puzzles.</summary>
    internal static Board[] BoardsOnPaths(int puzzles) => [.. Sample(puzzles).SelectMany(line => SolvingPath.Boards(Board.Parse(line)))];

    private static string[] Generate() =>
        [.. Enumerable.Range(0, 2_000).Select(seed => Generator.Make((ulong)seed, new() { Symmetric = false }).Board.ToString())];

    // The nearest one on the way up from the program, which BenchmarkDotNet builds into a folder of its own.
    private static string? FindFile()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var file = Path.Combine(folder.FullName, "shared", "data", FileName);
            if (File.Exists(file))
                return file;
        }

        return null;
    }
}
