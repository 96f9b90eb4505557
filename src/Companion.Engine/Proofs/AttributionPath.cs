namespace Companion.Engine.Proofs;

/// <summary>
/// The cheapest way to a target through the arcs of a graph of "and" and "or": something comes about by any arc that gives it, and
/// an arc needs everything that it needs. What two branches share is paid for twice while ways are compared.
/// </summary>
internal sealed class AttributionPath
{
    private readonly Dictionary<Fact, (AttributionCost Cost, AttributionArc Arc)> _cheapest = [];
    private readonly List<AttributionArc> _steps = [];
    private readonly Dictionary<AttributionArc, AttributionTarget> _uses = new(ReferenceEqualityComparer.Instance);

    private AttributionPath(IReadOnlyList<AttributionArc> arcs)
    {
        // Every cost is above zero, so that nothing is ever needed for itself. Arcs come in the order found: one pass finds a way,
        // and few more the cheapest.
        for (var isChanged = true; isChanged;)
        {
            isChanged = false;
            foreach (var arc in arcs)
                isChanged |= Offer(arc);
        }
    }

    private readonly record struct Fact(Candidate Candidate, bool IsPlaced);

    /// <summary>
    /// The arcs of the cheapest way, each with what the later ones and the target need of it; what leads to an arc stands just before
    /// it. Null where there is no way.
    /// </summary>
    /// <param name="arcs">What was found.</param>
    /// <param name="target">The target, without what is so on the start board.</param>
    internal static IReadOnlyList<(AttributionArc Arc, AttributionTarget Use)>? Find(
        IReadOnlyList<AttributionArc> arcs, AttributionTarget target)
    {
        var path = new AttributionPath(arcs);
        if (path.CostOf(target) == AttributionCost.Infinite)
            return null;
        path.Visit(target);
        return [.. path._steps.Select(arc => (arc, path._uses[arc]))];
    }

    private bool Offer(AttributionArc arc)
    {
        var cost = CostOf(arc.Needs);
        if (cost == AttributionCost.Infinite)
            return false;
        cost += arc.Cost;
        var isCheaper = false;
        foreach (var fact in Facts(arc.Gives))
        {
            if (_cheapest.TryGetValue(fact, out var best) && !(cost < best.Cost))
                continue;
            _cheapest[fact] = (cost, arc);
            isCheaper = true;
        }

        return isCheaper;
    }

    // What one arc gives is paid for once, since most of what an arc needs comes in such bundles.
    private AttributionCost CostOf(AttributionTarget needs)
    {
        var sum = new AttributionCost(0, 0);
        var paid = new HashSet<AttributionArc>(ReferenceEqualityComparer.Instance);
        foreach (var fact in Facts(needs))
        {
            if (!_cheapest.TryGetValue(fact, out var best))
                return AttributionCost.Infinite;
            if (paid.Add(best.Arc))
                sum += best.Cost;
        }

        return sum;
    }

    private void Visit(AttributionTarget needs)
    {
        foreach (var fact in Facts(needs))
        {
            var arc = _cheapest[fact].Arc;
            var use = fact.IsPlaced ? AttributionTarget.Place(fact.Candidate) : AttributionTarget.Remove(fact.Candidate);
            if (_uses.TryGetValue(arc, out var before))
            {
                _uses[arc] = before.And(use);
                continue;
            }

            _uses[arc] = use;
            Visit(arc.Needs);
            _steps.Add(arc);
        }
    }

    private static IEnumerable<Fact> Facts(AttributionTarget target) =>
        target.Places.Select(candidate => new Fact(candidate, IsPlaced: true))
            .Concat(target.Removes.Select(candidate => new Fact(candidate, IsPlaced: false)));
}
