namespace Companion.Drawing.Paper;

/// <summary>A piece of a page, as wide as the page, that no page break cuts through.</summary>
/// <param name="Height">Its height.</param>
/// <param name="Paint">Paints it, with its top edge at a place.</param>
internal sealed record Strip(float Height, Action<Sheet, float> Paint)
{
    /// <summary>The white above it, which is left out at the top of a page.</summary>
    internal float Gap { get; init; }

    /// <summary>Whether it stands on one page with the strip after it, if they fit on one at all.</summary>
    internal bool StaysWithNext { get; init; }

    /// <summary>The strip with something that is read before it.</summary>
    internal Strip After(Action<Sheet, float> first) => this with { Paint = first + Paint };

    /// <summary>The strip with something that is read after it.</summary>
    internal Strip Before(Action<Sheet, float> next) => this with { Paint = Paint + next };
}
