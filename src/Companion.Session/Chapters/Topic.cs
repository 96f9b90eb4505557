using System.Collections.Immutable;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Session.Chapters;

/// <summary>What a show was about from a time on.</summary>
/// <param name="At">The time, as in <see cref="ChapterMark.At"/>.</param>
public abstract record Topic(TimeSpan At)
{
    /// <summary>How much it is worth a chapter of its own: of two that are merged the worthier gives the title.</summary>
    public abstract int Weight { get; }

    /// <summary>The beginning, before anything was told.</summary>
    public sealed record Beginning(TimeSpan At) : Topic(At)
    {
        /// <inheritdoc/>
        public override int Weight => 2;
    }

    /// <summary>A puzzle was loaded.</summary>
    /// <param name="At">When.</param>
    /// <param name="Title">Its title; may be empty.</param>
    public sealed record Loaded(TimeSpan At, string Title) : Topic(At)
    {
        /// <inheritdoc/>
        public override int Weight => 2000;
    }

    /// <summary>Steps that were told in one go.</summary>
    /// <param name="At">When the first was.</param>
    /// <param name="Passage">What they have in common.</param>
    /// <param name="Steps">The steps.</param>
    /// <param name="Cost">What the dearest of them costs on the ladder.</param>
    public sealed record Told(TimeSpan At, Passage Passage, ImmutableArray<Deduction> Steps, int Cost) : Topic(At)
    {
        /// <summary>Whether any of them was on air, which tells more of a show than what was only used or entered.</summary>
        public bool WasOnAir { get; init; }

        /// <inheritdoc/>
        public override int Weight => (WasOnAir ? 1000 : 0) + Math.Min(Cost, 999);
    }

    /// <summary>The grid was full.</summary>
    /// <param name="At">When.</param>
    public sealed record Solved(TimeSpan At) : Topic(At)
    {
        /// <inheritdoc/>
        public override int Weight => 1;
    }
}
