using System.Collections.Immutable;
using System.Globalization;

namespace Companion.Server.Planning;

/// <summary>A run sheet as plain text.</summary>
internal static class RunSheetText
{
    /// <summary>How many talking points are written.</summary>
    public const int MostPoints = 12;

    /// <summary>Writes a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="notes">What is to be said at each step, in the order of the sheet; empty where nothing is.</param>
    /// <param name="output">Where to.</param>
    public static void Write(RunSheet sheet, ImmutableArray<string> notes, TextWriter output)
    {
        foreach (var passage in sheet.Passages)
        {
            output.WriteLine($"{Clock(passage.At),6}  {passage.Title} ({Clock(passage.Seconds)})");
            foreach (var step in sheet.Steps[(passage.First - 1)..passage.Last])
            {
                output.WriteLine($"{step.Number,12}  {(step.IsGate ? "gate " : "")}{step.Short}");
                if (notes[step.Number - 1] is { Length: > 0 } note)
                    output.WriteLine($"{"",14}Note: {note}");
            }
        }

        output.WriteLine($"{Clock(sheet.Seconds),6}  {(sheet.IsComplete ? "The grid is full." : "The ladder leads no further.")}");
        foreach (var featured in sheet.Featured)
            output.WriteLine(Of(featured));

        if (!sheet.TalkingPoints.IsEmpty)
            output.WriteLine("Worth saying, the rarest first:");
        foreach (var point in sheet.TalkingPoints.Take(MostPoints))
            output.WriteLine($"{point.Step,12}  {point.Text}");
    }

    /// <summary>Where a featured rule has its turn, in one sentence.</summary>
    /// <param name="featured">The rule.</param>
    public static string Of(RunSheet.FeaturedLine featured) => featured.Step is { } step
        ? $"{featured.Name}: step {step}{Others(featured)}."
        : $"{featured.Name}: open nowhere on this route.";

    /// <summary>A time as minutes and seconds: <c>1:05</c>.</summary>
    /// <param name="seconds">The time in seconds.</param>
    public static string Clock(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{(int)seconds / 60}:{(int)seconds % 60:00}");

    private static string Others(RunSheet.FeaturedLine featured) => featured.Others.IsEmpty
        ? ""
        : $"; also open: {string.Join("; ", featured.Others.Select(Of))}";

    // By what follows too: the same cells may hold several patterns, and what comes of them is what is said.
    private static string Of(RunSheet.OtherLine other) =>
        $"{string.Join(' ', other.Cells)}, which {Follows(other)}, before {(other.FromStep == other.ToStep ? $"step {other.FromStep}" : $"steps {other.FromStep} to {other.ToStep}")}";

    private static string Follows(RunSheet.OtherLine other) => other.Places.IsEmpty
        ? $"takes out {string.Join(" and ", other.Removes.Digits)}"
        : $"places {string.Join(" and ", other.Places.Digits)}";
}
