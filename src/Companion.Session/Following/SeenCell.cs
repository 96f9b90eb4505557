namespace Companion.Session.Following;

/// <summary>One cell as it was read off the presenter's screen.</summary>
/// <param name="Content">What stands there.</param>
/// <param name="IsGiven">Whether its digit looks like a given; null where nothing tells them apart, or without a digit.</param>
/// <param name="IsSure">Whether it was read for certain; else the presenter is asked.</param>
public readonly record struct SeenCell(CellContent Content, bool? IsGiven, bool IsSure)
{
    /// <summary>Whether a mark in it does not look as it should, so that what reads the same may have been changed; false by default.</summary>
    public bool HasDoubtfulMark { get; init; }
}
