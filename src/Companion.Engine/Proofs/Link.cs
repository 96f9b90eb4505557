namespace Companion.Engine.Proofs;

/// <summary>
/// A link between two candidates of a pattern, as a picture draws it. An end may stand for a group: the digit in one of several
/// cells.
/// </summary>
/// <param name="From">One end; of a group, the candidate to which the line is drawn.</param>
/// <param name="To">The other end.</param>
/// <param name="IsStrong">Strong: if one is false the other is true. Otherwise weak: not both are true.</param>
public readonly record struct Link(Candidate From, Candidate To, bool IsStrong)
{
    /// <summary>The cells of the group at the first end, its own among them; empty where the end is a single candidate.</summary>
    public CellSet FromGroup { get; init; }

    /// <summary>The cells of the group at the other end, its own among them; empty where the end is a single candidate.</summary>
    public CellSet ToGroup { get; init; }

    /// <summary>All candidates at the two ends.</summary>
    internal CandidateSet Ends =>
        CandidateSet.Of(FromGroup.With(From.Cell), From.Digit) | CandidateSet.Of(ToGroup.With(To.Cell), To.Digit);

    /// <summary>Whether it goes through an X-wing: strong, of one digit, and in no one house.</summary>
    internal bool IsThroughFish => IsStrong && From.Digit == To.Digit && Ends.Cells.CommonHouses.IsEmpty;

    /// <summary>Whether this one ends where the other does.</summary>
    internal bool EndsLike(Link other) => To == other.To && ToGroup == other.ToGroup;

    /// <summary>Whether this one starts where the other ends.</summary>
    internal bool GoesOnFrom(Link other) =>
        From.Digit == other.To.Digit && (FromGroup.IsEmpty ? From == other.To && other.ToGroup.IsEmpty : FromGroup == other.ToGroup);
}
