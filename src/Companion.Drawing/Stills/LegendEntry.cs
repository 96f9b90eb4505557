using Companion.Drawing.Pictures;

namespace Companion.Drawing.Stills;

/// <summary>A sample of a shape with what it means.</summary>
/// <param name="Sample">The shape, within the square from (0, 0) to (1.5, 1).</param>
/// <param name="Words">What it means.</param>
internal sealed record LegendEntry(Shape Sample, string Words)
{
    /// <summary>How many times larger than a line of the legend a cell of the sample is, so that each fills the line.</summary>
    internal float Scale => Sample switch
    {
        MarkShape or SlashShape => 3.2f,
        LozengeShape => 1.2f,
        GroupShape or LinkShape => 1.3f,
        _ => 0.9f,
    };
}
