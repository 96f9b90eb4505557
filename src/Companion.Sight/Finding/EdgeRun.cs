namespace Companion.Sight.Finding;

/// <summary>A straight run of edges along a row or a column.</summary>
/// <param name="At">The coordinate of the edge: between pixel <c>At - 1</c> and pixel <c>At</c>.</param>
/// <param name="From">The first pixel along the run.</param>
/// <param name="To">The pixel after the last one.</param>
internal readonly record struct EdgeRun(int At, int From, int To)
{
    /// <summary>From end to end.</summary>
    public int Length => To - From;
}
