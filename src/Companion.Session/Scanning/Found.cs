using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Scanning;

/// <summary>One deduction that a scan found open.</summary>
/// <param name="Deduction">The deduction.</param>
/// <param name="Rung">The rung of its rule, 0 for the easiest.</param>
/// <param name="Unseen">Candidates it rests on that no viewer can see to be gone.</param>
/// <param name="First">The deduction, shown or used before, that took the first of them out; null where none is unseen.</param>
/// <param name="OpenSince">The number of entries made when it was first found open; see <see cref="State.SessionState.Entries"/>.</param>
public sealed record Found(Deduction Deduction, int Rung, CandidateSet Unseen, Deduction? First, int OpenSince);
