using Companion.Engine.Proofs;

namespace Companion.Session.Scanning;

/// <summary>An entry that carried out a deduction which was open before it.</summary>
/// <param name="Entry">The entry's number.</param>
/// <param name="Deduction">The easiest open deduction whose conclusion it did.</param>
/// <param name="Rung">The rung of its rule.</param>
public sealed record Carried(int Entry, Deduction Deduction, int Rung);
