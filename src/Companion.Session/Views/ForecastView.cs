using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Planning;

namespace Companion.Session.Views;

/// <summary>When the featured rules come, for the presenter and the co-hosts.</summary>
/// <param name="Sequence">Number of the state whose board it looks ahead from; at most that of the desk view beside it.</param>
/// <param name="Blocked">Why nothing can be expected, in one plain sentence, or null.</param>
/// <param name="Rules">The featured rules in order; none where it is blocked.</param>
public sealed record ForecastView(long Sequence, string? Blocked, ImmutableArray<ForecastView.Line> Rules)
{
    /// <summary>The view of an outlook.</summary>
    /// <param name="outlook">The outlook.</param>
    /// <param name="voice">The words.</param>
    public static ForecastView Of(Outlook outlook, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        ArgumentNullException.ThrowIfNull(voice);
        return new(outlook.Sequence, outlook.Blocked, [.. outlook.Prospects.Select(prospect => Line.Of(prospect, voice))]);
    }

    /// <summary>What is to be expected of one rule.</summary>
    /// <param name="Rule">The rule.</param>
    /// <param name="Name">Its spoken name.</param>
    /// <param name="Coming">When it comes.</param>
    /// <param name="IsPassed">Whether it was open or ahead once, and is not any more.</param>
    /// <param name="Steps">How many easier steps lead to it at most; null where none do.</param>
    /// <param name="AtLeast">How many lead to it at least: equal where there is no shorter way; null where none lead to it.</param>
    /// <param name="Watch">The cells of the pattern that comes first; none where none comes by easier steps.</param>
    /// <param name="NearMisses">Patterns that one candidate is in the way of, those first whose candidate goes first.</param>
    public sealed record Line(
        RuleId Rule, string Name, Coming Coming, bool IsPassed, int? Steps, int? AtLeast, ImmutableArray<Cell> Watch, ImmutableArray<Miss> NearMisses)
    {
        internal static Line Of(Prospect prospect, Voice voice) => new(
            prospect.Rule,
            voice.Wording.NameOf(prospect.Rule),
            prospect.Coming,
            prospect.IsPassed,
            prospect.Forecast is { First: not null, Before.Length: var steps } ? steps : null,
            prospect.Forecast is { First: not null, AtLeast: var least } ? least : null,
            [.. prospect.Forecast?.Watch ?? CellSet.Empty],
            [.. prospect.Forecast?.NearMisses.Select(miss =>
                new Miss(miss.InTheWay.Cell, miss.InTheWay.Digit, [.. miss.Deduction.PatternCells])) ?? []]);
    }

    /// <summary>A pattern that would be there but for one candidate.</summary>
    /// <param name="Cell">The candidate's cell.</param>
    /// <param name="Digit">The candidate's digit.</param>
    /// <param name="Pattern">The cells of the pattern.</param>
    public sealed record Miss(Cell Cell, Digit Digit, ImmutableArray<Cell> Pattern);
}
