using Companion.Engine;
using Companion.Engine.Rules;
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

    private static readonly string[] Seventeen = Lines(FileName) ?? Generate();

    /// <summary>The ladder that ships, with all families on.</summary>
    internal static Ladder Ladder { get; } =
        Ladder.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "configs", "ladder.json")));

    /// <summary>Which of the two it is, in one sentence.</summary>
    internal static string Description => Lines(FileName) is null
        ? $"shared/data/{FileName} is absent: measured on {Seventeen.Length} minimal puzzles of our own generator instead."
        : $"Measured on {FileName}, {Seventeen.Length} puzzles.";

    /// <summary>Puzzles from all over the list, evenly spaced, as 81 characters each.</summary>
    internal static string[] Sample(int count) => Sample(Seventeen, count);

    /// <summary>Puzzles from all over another list of the open data, evenly spaced; none where the list is absent.</summary>
    internal static string[] Sample(string fileName, int count) => Sample(Lines(fileName) ?? [], count);

    /// <summary>Every board on the solving paths of a sample of puzzles.</summary>
    internal static Board[] BoardsOnPaths(int puzzles) => BoardsOnPaths(Sample(puzzles));

    /// <summary>Every board on the solving paths of these puzzles.</summary>
    internal static Board[] BoardsOnPaths(string[] puzzles) => [.. puzzles.SelectMany(line => SolvingPath.Boards(Board.Parse(line)))];

    private static string[] Sample(string[] lines, int count)
    {
        count = Math.Min(count, lines.Length);
        return [.. Enumerable.Range(0, count).Select(i => lines[(long)i * lines.Length / count])];
    }

    private static string[]? Lines(string fileName) => FindFile(fileName) is { } file ? File.ReadAllLines(file) : null;

    private static string[] Generate() =>
        [.. Enumerable.Range(0, 2_000).Select(seed => Generator.Make((ulong)seed, new() { Symmetry = null }).Board.ToString())];

    // The nearest one on the way up from the program, which BenchmarkDotNet builds into a folder of its own.
    private static string? FindFile(string fileName)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var file = Path.Combine(folder.FullName, "shared", "data", fileName);
            if (File.Exists(file))
                return file;
        }

        return null;
    }
}
