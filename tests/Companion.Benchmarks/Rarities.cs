using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Planning.Talking;

namespace Companion.Benchmarks;

/// <summary>
/// How often each talking point is true of the planned route of a puzzle, for <c>configs/rarity.json</c>: over minimal puzzles of a
/// collection that was drawn with a controlled bias (D. Berthier, DOI 10.5281/zenodo.17491457), since any other kind of generator
/// makes easy puzzles too often. With the whole ladder, last resorts too; puzzles that it does not solve are left out.
/// </summary>
internal static class Rarities
{
    private const int Sample = 3_000;

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    internal static void Print(TextWriter output)
    {
        var keys = Puzzles.Sample("minimal-with-published-counts.tsv", Sample).AsParallel().Select(KeysOf).OfType<string[]>().ToList();
        var counts = keys.SelectMany(all => all).GroupBy(key => key).ToSortedDictionary();
        output.WriteLine(JsonSerializer.Serialize(new { puzzles = keys.Count, counts }, Indented));
    }

    private static SortedDictionary<string, int> ToSortedDictionary(this IEnumerable<IGrouping<string, string>> groups) =>
        new(groups.ToDictionary(group => group.Key, group => group.Count()), StringComparer.Ordinal);

    private static string[]? KeysOf(string line)
    {
        if (Puzzle.Read(BoardText.Read(line.Split('\t')[0])).Value is not { } puzzle)
            return null; // The heading.
        var plan = RunPlan.From(puzzle.Board, Puzzles.Ladder, []);
        return plan.IsComplete ? [.. TalkingPoints.Of(plan).SelectMany(AtLeast).Distinct()] : null;
    }

    // What fills five cells fills four.
    private static IEnumerable<string> AtLeast(TalkingPoint point) => point is TalkingPoint.Fills fills
        ? Enumerable.Range(1, fills.Cells).Select(cells => (fills with { Cells = cells }).Key)
        : point.Key is { } key ? [key] : [];
}
