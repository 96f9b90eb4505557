using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Asks;

namespace Companion.Server.Relay.Notices;

/// <summary>A viewer's ask on its way to the presenter's server.</summary>
/// <param name="From">The audience server that is to get the answer.</param>
/// <param name="Id">Its number there.</param>
/// <param name="Viewer">What the viewer is known by: the page's own random name, no name of a person.</param>
/// <param name="Kind">What is asked: hint, why or call.</param>
/// <param name="Cell">The cell, or null.</param>
/// <param name="Number">The grade of a hint or the digit of a call, or null.</param>
internal sealed record AskNotice(string From, long Id, string Viewer, string Kind, Cell? Cell, int? Number)
{
    /// <summary>The notice of an ask.</summary>
    /// <param name="from">The audience server.</param>
    /// <param name="id">The ask's number there.</param>
    /// <param name="viewer">The viewer.</param>
    /// <param name="ask">What is asked.</param>
    /// <exception cref="ArgumentException">No page asks this.</exception>
    public static AskNotice Of(string from, long id, string viewer, Ask ask) => ask switch
    {
        AskHint hint => new(from, id, viewer, "hint", hint.Cell, (int?)hint.UpTo),
        AskWhy why => new(from, id, viewer, "why", why.Cell, null),
        AskCall call => new(from, id, viewer, "call", call.Cell, call.Digit?.Value),
        _ => throw new ArgumentException("No page asks this.", nameof(ask)),
    };

    /// <summary>What is asked, or null where that is nothing.</summary>
    public Ask? Ask() => (Kind, Cell, Number) switch
    {
        ("hint", _, null or (>= (int)Grade.Where and <= (int)Grade.Why)) => new AskHint(Cell, (Grade?)Number),
        ("why", { } cell, _) => new AskWhy(cell),
        ("call", { } cell, null) => new AskCall(cell, null),
        ("call", { } cell, >= 1 and <= Digit.Count) => new AskCall(cell, Digit.Of(Number.Value)),
        _ => null,
    };
}
