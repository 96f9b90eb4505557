using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Gathering;
using Companion.Session.Asks.Steps;
using Companion.Session.Asks.Viewers;
using Companion.Session.State;

namespace Companion.Session.Asks;

/// <summary>Chooses the deduction and the grade that a viewer gets.</summary>
/// <param name="wording">The words.</param>
/// <param name="cache">Where what is open is looked up.</param>
internal sealed class HintAnswerer(Wording wording, StepsCache cache)
{
    /// <summary>The answer to a viewer who wants a hint; null where they were told already to wait.</summary>
    /// <param name="ask">What is wanted.</param>
    /// <param name="seen">What the viewer sees.</param>
    /// <param name="viewer">What is remembered of the viewer.</param>
    /// <param name="highest">The highest grade that the presenter allows.</param>
    /// <param name="now">The time.</param>
    public Prepared? Of(AskHint ask, SessionState seen, Viewer viewer, Grade highest, DateTimeOffset now)
    {
        if (ask.Cell is { } cell && seen.Grid.DigitAt(cell) is not null)
            return Prepared.Of(new CellFilled(cell));
        var steps = cache.On(seen);
        if (steps.Easiest(ask.Cell) is not { } easiest)
            return Prepared.Of(new NothingOpen(ask.Cell));

        // What was told and is not marked comes first, until the viewer has had as much of it as there is to be had.
        var missing = steps.MissingBefore(easiest.Deduction)
            .FirstOrDefault(first => !(viewer.Of(NameOf(first))?.Grade >= highest));
        var deduction = missing ?? easiest.Deduction;
        var step = NameOf(deduction);
        var given = viewer.Of(step);
        var hints = wording.HintsFor(missing is null ? steps.Known! : steps.Seen!, deduction);
        var wanted = ask.UpTo ?? (given?.Grade + 1 ?? Grade.Where);
        if (ask.Cell is { } named && GivesAway(hints.Which, deduction, named))
        {
            highest = highest == Grade.Which ? Grade.What : highest;
            wanted = wanted == Grade.Which ? ask.UpTo is null ? Grade.Why : Grade.What : wanted;
        }

        if (given?.Grade == Grade.Why && ask.UpTo is null)
            return Prepared.Of(new AllGiven());
        if (given?.Grade >= highest && wanted > highest)
            return Prepared.Of(new NoFurther(highest));
        if (wanted > highest)
            wanted = highest;
        if (given is not null && wanted > given.Grade && now < given.NextAt)
            return Wait(given, now);

        return new(new HintGiven(hints[wanted], missing is not null), (step, wanted), step);

        string NameOf(Deduction named) => StepName.Of(seen.Grid.Loading, named);
    }

    // Grade 3 keeps the cells back that something follows for. Of whoever has named one of them it would keep back nothing.
    private static bool GivesAway(WhichHint hint, Deduction deduction, Cell named) =>
        (deduction.Places.Cells | deduction.Removes.Cells).Contains(named) && !hint.Cells.Any(part => part.Cell == named);

    private static Prepared? Wait(Given given, DateTimeOffset now)
    {
        if (given.IsToldToWait)
            return null;
        given.IsToldToWait = true;
        return Prepared.Personal(new TooSoon(given.NextAt - now));
    }
}
