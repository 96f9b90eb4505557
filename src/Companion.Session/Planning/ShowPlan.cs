using Companion.Engine.Planning;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>What is planned for one loading of a puzzle. Compared by value.</summary>
/// <param name="Loading">The loading of the puzzle that it belongs to; see <see cref="Grid.Loading"/>.</param>
/// <param name="Featured">The rules that the puzzle is to show, at most <see cref="MostFeatured"/>, each once.</param>
public sealed record ShowPlan(int Loading, ValueArray<Feature> Featured)
{
    /// <summary>So many rules can be featured: more than that are no feature any more.</summary>
    public const int MostFeatured = 5;
}
