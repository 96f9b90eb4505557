using Companion.Engine.Proofs;

namespace Companion.Session.Asks.Viewers;

/// <summary>How far a viewer got with one deduction.</summary>
/// <param name="Step">The deduction; see <see cref="Steps.StepName"/>.</param>
/// <param name="Grade">The highest grade that they got.</param>
/// <param name="NextAt">From when on they get the next.</param>
internal sealed record Given(string Step, Grade Grade, DateTimeOffset NextAt)
{
    /// <summary>Whether they were told to wait for it; once is enough.</summary>
    public bool IsToldToWait { get; set; }
}
