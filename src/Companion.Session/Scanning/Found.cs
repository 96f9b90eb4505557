using Companion.Engine.Proofs;
using Companion.Session.Boards;

namespace Companion.Session.Scanning;

/// <summary>One deduction that a scan found open.</summary>
/// <param name="Deduction">The deduction.</param>
/// <param name="Rung">The rung of its rule, 0 for the easiest.</param>
/// <param name="Support">What of its support viewers cannot see.</param>
/// <param name="OpenSince">
/// The number of entries made when it was first found open; see <see cref="State.SessionState.Entries"/>.
/// </param>
public sealed record Found(Deduction Deduction, int Rung, Support Support, int OpenSince);
