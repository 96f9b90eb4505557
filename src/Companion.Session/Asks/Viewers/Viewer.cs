using Companion.Engine.Proofs;

namespace Companion.Session.Asks.Viewers;

/// <summary>What is remembered of one viewer: when they asked, and how far they got with the last few deductions.</summary>
internal sealed class Viewer
{
    // Who asks about a cell here and a cell there comes back to a few deductions, not to more.
    private const int MostSteps = 8;

    private readonly LinkedList<Given> _given = new();

    /// <summary>When they last asked; null before the first time.</summary>
    public DateTimeOffset? AskedAt { get; set; }

    /// <summary>When they last made a call.</summary>
    public DateTimeOffset? CalledAt { get; set; }

    /// <summary>Whether a question of theirs waits for its answer.</summary>
    public bool Waits { get; set; }

    /// <summary>The last grade that they got of a deduction, or null.</summary>
    /// <param name="step">The deduction.</param>
    public Given? Of(string step) => _given.FirstOrDefault(given => given.Step == step);

    /// <summary>They got a grade of a deduction.</summary>
    /// <param name="step">The deduction.</param>
    /// <param name="grade">The grade.</param>
    /// <param name="nextAt">From when on they get the next.</param>
    public void Get(string step, Grade grade, DateTimeOffset nextAt)
    {
        if (Of(step) is { } before)
        {
            _given.Remove(before);

            // A grade once more begins no pause anew, and takes nothing back.
            if (before.Grade >= grade)
                (grade, nextAt) = (before.Grade, before.NextAt);
        }

        _given.AddFirst(new Given(step, grade, nextAt));
        if (_given.Count > MostSteps)
            _given.RemoveLast();
    }
}
