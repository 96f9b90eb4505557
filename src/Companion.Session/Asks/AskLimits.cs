using Companion.Engine.Proofs;

namespace Companion.Session.Asks;

/// <summary>How far the presenter lets viewers go at the moment.</summary>
/// <param name="Open">Whether viewers may ask at all.</param>
/// <param name="Highest">The highest grade that they get.</param>
/// <param name="QuietOnAir">Whether they are not answered while something is on air.</param>
public sealed record AskLimits(bool Open, Grade Highest, bool QuietOnAir);
