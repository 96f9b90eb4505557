using System.Collections.Immutable;

namespace Companion.Sight.Tests.Boards;

/// <summary>What a drawn cell holds.</summary>
/// <param name="Digit">The big digit, or 0.</param>
/// <param name="IsGiven">Whether it is a given.</param>
/// <param name="Marks">The small digits, ascending.</param>
public sealed record DrawnCell(int Digit, bool IsGiven, ImmutableArray<DrawnMark> Marks)
{
    /// <summary>Whether so much of the big digit is covered that nobody can tell it, as Covering measures.</summary>
    public bool IsCovered { get; init; }

    /// <summary>Whether anything in the cell is covered.</summary>
    public bool HasCovered => IsCovered || Marks.Any(mark => mark.IsCovered);
}

/// <summary>A small digit.</summary>
/// <param name="Digit">1 to 9.</param>
/// <param name="IsStruck">Whether a line goes through it.</param>
public readonly record struct DrawnMark(int Digit, bool IsStruck)
{
    /// <summary>Whether so much of it, or of the line through it, is covered that nobody can tell it.</summary>
    public bool IsCovered { get; init; }
}
